package yardlight.channels.modem;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Message;
import yardlight.channels.gsm.Segment;
import yardlight.channels.gsm.Submit;
import yardlight.channels.gsm.TpAddress;

/**
 * One text on its way: all its parts one after the other. The first that is not taken decides.
 *
 * <p>All that a short message has to tell the same text sent again is TP-Message-Reference, one octet, which is made of the
 * message's id; most modems write their own number over it. So a text that is sent again arrives again. TP-Reject-Duplicates
 * is left off: with one octet it would also turn away texts that are new.
 */
final class Outgoing {

    /** What is longer is cut: common practice, no source, is to take at most ten. */
    private static final int MOST_PARTS = 10;

    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    private final ModemSettings settings;
    private final References references;
    private final InstantSource clock;

    Outgoing(ModemSettings settings, References references, InstantSource clock) {
        this.settings = settings;
        this.references = references;
        this.clock = clock;
    }

    /**
     * A {@link Gone} if nothing of it can have been taken.
     *
     * @param end when no further part is to be begun, in the time of {@link System#nanoTime()}
     */
    Attempt send(Message message, Dialogue dialogue, long end) throws Gone {
        // A modem that started anew would take the PDU for a text, and its length for a number to send it to.
        Answer mode = dialogue.ask("AT+CMGF=0");
        if (!mode.isOk()) {
            return Attempt.deferred("the modem takes no texts: " + Trouble.words(mode))
                    .forEveryMessage();
        }
        List<Integer> numbers = new ArrayList<>();
        Attempt attempt = Attempt.deferred("there is nothing to send");
        for (Submit part : parts(message)) {
            if (System.nanoTime() - end >= 0) {
                return Attempt.deferred("the modem took too long with its first parts");
            }
            Taken taken = submit(part, dialogue);
            attempt = taken.attempt();
            if (attempt.outcome() != Outcome.ACCEPTED) {
                return attempt;
            }
            taken.number().ifPresent(numbers::add);
        }
        return numbers.isEmpty()
                ? attempt
                : Attempt.accepted(attempt.detail(), references.taken(message.address(), numbers, clock.instant()));
    }

    /** @param number by which the modem calls it, if it took it and says so */
    private record Taken(Attempt attempt, Optional<Integer> number) {

        static Taken not(Attempt attempt) {
            return new Taken(attempt, Optional.empty());
        }
    }

    private List<Submit> parts(Message message) {
        byte[] digest = digest(message.id());
        int reference = digest[0] & 0xFF;
        List<Segment> segments = Segment.of(Segment.clean(message.text()), digest[1] & 0xFF, MOST_PARTS);
        TpAddress to = TpAddress.to(message.address());
        List<Submit> parts = new ArrayList<>();
        for (Segment segment : segments) {
            int number = reference + parts.size() & 0xFF;
            parts.add(new Submit(number, to, true, settings.validityPeriod(), segment));
        }
        return parts;
    }

    private Taken submit(Submit part, Dialogue dialogue) throws Gone {
        byte[] octets = part.octets();
        Optional<Answer> refusal = dialogue.announce(octets.length);
        if (refusal.isPresent()) {
            return Taken.not(refused(refusal.get()));
        }
        dialogue.text(centre() + HEX.formatHex(octets));
        try {
            return dialogue.sent(settings.timeouts().network())
                    .map(Outgoing::taken)
                    .orElseGet(() -> Taken.not(doubtful("the modem says nothing of it", dialogue)));
        } catch (Gone e) {
            return Taken.not(doubtful(e.getMessage(), dialogue));
        }
    }

    /** No text had been given to it yet: whatever it says, nothing was sent. */
    private static Attempt refused(Answer answer) {
        Attempt attempt = Trouble.of(answer);
        boolean settled = attempt.outcome() == Outcome.REFUSED || attempt.outcome() == Outcome.DEFERRED;
        return settled ? attempt : Attempt.deferred(attempt.detail()).forEveryMessage();
    }

    private static Attempt doubtful(String why, Dialogue dialogue) {
        dialogue.breakOff(why);
        return Attempt.unknown("sent, but not confirmed: " + why).forEveryMessage();
    }

    private static Taken taken(Answer answer) {
        if (!answer.isOk()) {
            return Taken.not(Trouble.of(answer));
        }
        String words =
                answer.lines().isEmpty() ? answer.result() : answer.lines().get(0);
        Optional<Integer> number = answer.values()
                .filter(values -> values[0].matches("[0-9]{1,3}"))
                .map(values -> Integer.valueOf(values[0]));
        return new Taken(Attempt.accepted("taken by the network (" + words + ")"), number);
    }

    /** The octets for the service centre, whose own length counts the type too; one zero leaves it to the card. */
    private String centre() {
        return settings.sim()
                .centre()
                .map(number -> HEX.formatHex(TpAddress.to(number).asCentre()))
                .orElse("00");
    }

    private static byte[] digest(String id) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
