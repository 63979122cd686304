package yardlight.channels.modem;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Receipt;
import yardlight.channels.gsm.Concatenation;
import yardlight.channels.gsm.Deliver;
import yardlight.channels.gsm.Joining;
import yardlight.channels.gsm.StatusReport;
import yardlight.channels.gsm.TpAddress;
import yardlight.channels.phone.PhoneNumbers;
import yardlight.channels.phone.PhoneNumbers.Kind;

/**
 * Brings to the inbox what the modem has: texts, whole or in parts, and receipts. Whatever is not taken stays with the modem
 * and is brought again, under the same id. For one thread.
 *
 * <p>Parts whose others never come are dropped after an hour, so that they do not fill the card. And a text that was on the
 * card for more than a day when it is first looked at is left out: the card may have been in somebody's phone, and an old
 * OK must answer nothing.
 */
final class Arrivals {

    private static final Logger LOG = LoggerFactory.getLogger(Arrivals.class);

    private static final Duration OLD = Duration.ofDays(1);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);

    private final Optional<String> home;
    private final References references;
    private final InstantSource clock;
    private final Joining joining = new Joining();
    private final Map<String, Instant> waiting = new HashMap<>();

    Arrivals(Optional<String> home, References references, InstantSource clock) {
        this.home = home;
        this.references = references;
        this.clock = clock;
    }

    /**
     * Takes in what there is.
     *
     * @param first whether nobody has looked at it before
     * @return those that have been dealt with for good
     */
    Set<Entry> take(List<Entry> entries, Inbox inbox, boolean first) {
        var look = new Look(inbox, first, clock.instant());
        waiting.values()
                .removeIf(since -> since.plus(LONGEST_WAIT.multipliedBy(2)).isBefore(look.now));
        for (Entry entry : entries) {
            try {
                if (isDone(entry, look)) {
                    look.done.add(entry);
                }
            } catch (IllegalArgumentException e) {
                LOG.warn("the modem has a message that cannot be read: {}", e.getMessage());
                look.done.add(entry);
            }
        }
        look.parts.forEach((which, parts) -> {
            if (parts.whole.isPresent() && joined(which, parts, look)) {
                look.done.addAll(parts.entries);
            }
        });
        return look.done;
    }

    /** One look through what the modem has. */
    private static final class Look {

        private final Inbox inbox;
        private final boolean first;
        private final Instant now;
        private final Set<Entry> done = new HashSet<>();
        private final Map<Which, Parts> parts = new LinkedHashMap<>();

        Look(Inbox inbox, boolean first, Instant now) {
            this.inbox = inbox;
            this.first = first;
            this.now = now;
        }
    }

    /** Which text it is that has come in parts. */
    private record Which(String from, int reference, int total) {}

    /** Parts of one text that the modem has now. */
    private static final class Parts {

        private final List<Entry> entries = new ArrayList<>();
        private Optional<String> whole = Optional.empty();
        private Optional<Instant> at = Optional.empty();
    }

    private boolean isDone(Entry entry, Look look) {
        if (StatusReport.is(entry.message())) {
            return report(StatusReport.of(entry.message()), look);
        }
        if (!Deliver.is(entry.message())) {
            return false;
        }
        Deliver text = Deliver.of(entry.message());
        if (look.first
                && text.at().filter(at -> at.isBefore(look.now.minus(OLD))).isPresent()) {
            LOG.info(
                    "a text that came at {} was on the card and is left out",
                    text.at().get());
            return true;
        }
        return text.part().isPresent() ? part(entry, text, look) : whole(entry, text, look);
    }

    private boolean whole(Entry entry, Deliver text, Look look) {
        String id = digest(HexFormat.of().formatHex(entry.message()));
        return keep(
                look.inbox, id, from(entry, text.from()), text.text(), text.at().orElse(look.now));
    }

    /** Whether there is nothing to do about it any more: its text was kept before, or it has waited for too long. */
    private boolean part(Entry entry, Deliver text, Look look) {
        Instant since = waiting.computeIfAbsent(HexFormat.of().formatHex(entry.message()), any -> look.now);
        if (since.plus(LONGEST_WAIT).isBefore(look.now)) {
            LOG.warn("a part of a text has waited for the others for an hour and is dropped");
            return true;
        }
        Concatenation place = text.part().orElseThrow();
        var which = new Which(from(entry, text.from()), place.reference(), place.total());
        Joining.Joined joined = joining.add(which.from(), place, text.text(), look.now);
        if (joined.state() == Joining.State.KEPT_BEFORE) {
            return true;
        }
        Parts parts = look.parts.computeIfAbsent(which, any -> new Parts());
        parts.entries.add(entry);
        parts.at =
                parts.at.filter(at -> text.at().filter(at::isAfter).isEmpty()).or(text::at);
        if (joined.state() == Joining.State.WHOLE) {
            parts.whole = Optional.of(joined.text());
        }
        return false;
    }

    private boolean joined(Which which, Parts parts, Look look) {
        String text = parts.whole.orElseThrow();
        String place = which.reference() + "/" + which.total();
        String at = parts.at.map(Instant::toString).orElse("");
        String id = digest(String.join("\n", which.from(), place, at, text));
        boolean kept = keep(look.inbox, id, which.from(), text, parts.at.orElse(look.now));
        if (kept) {
            joining.kept(which.from(), new Concatenation(which.reference(), which.total(), 1), look.now);
        }
        return kept;
    }

    private static boolean keep(Inbox inbox, String id, String from, String text, Instant at) {
        try {
            return inbox.take(new Incoming(ModemChannel.NAME, id, from, text, at));
        } catch (RuntimeException e) {
            LOG.warn("a text that the modem has could not be kept", e);
            return false;
        }
    }

    private boolean report(StatusReport report, Look look) {
        Optional<References.Told> told = references.meaning(report, look.now);
        if (told.isEmpty()) {
            LOG.debug("a report about message {} says nothing to us", report.reference());
            return true;
        }
        References.Told given = told.get();
        String words = DeliveryStatus.words(report.status());
        try {
            Instant at = report.at().orElse(look.now);
            boolean kept = look.inbox.take(new Receipt(ModemChannel.NAME, given.reference(), given.fate(), words, at));
            if (kept) {
                references.heeded(given);
            }
            return kept;
        } catch (RuntimeException e) {
            LOG.warn("a report that the modem has could not be kept", e);
            return false;
        }
    }

    private String from(Entry entry, TpAddress sender) {
        Kind kind = switch (sender.ton()) {
            case INTERNATIONAL -> Kind.INTERNATIONAL;
            case NATIONAL -> Kind.NATIONAL;
            case ALPHANUMERIC -> Kind.NAME;
            case UNKNOWN, NETWORK_SPECIFIC, SUBSCRIBER, ABBREVIATED, RESERVED -> Kind.UNKNOWN;
        };
        return PhoneNumbers.international(kind, sender.digits(), home.or(entry::centre));
    }

    private static String digest(String words) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(words.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
