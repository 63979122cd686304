package yardlight.channels.smpp;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jsmpp.bean.AbstractSmCommand;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.gsm.Concatenation;
import yardlight.channels.gsm.Joining;

/**
 * Texts that people write to us, whole or in parts.
 *
 * <p>Parts can be kept only together, so the answer to the first ones waits for the last. A centre that brings no part
 * before the one before it was answered would wait for ever: after {@link #PATIENCE} it gets its answer, and that part is in
 * our memory alone until the rest has come. Lost with it is a long text of which only some had come.
 */
final class IncomingTexts {

    static final Duration PATIENCE = Duration.ofSeconds(2);

    private final Optional<String> home;
    private final InstantSource clock;
    private final ScheduledExecutorService timer;
    private final Joining joining = new Joining();
    private final Identities identities = new Identities();
    private final Map<String, List<Reply>> held = new HashMap<>();

    IncomingTexts(Optional<String> home, InstantSource clock, ScheduledExecutorService timer) {
        this.home = home;
        this.clock = clock;
        this.timer = timer;
    }

    void take(AbstractSmCommand unit, Inbox inbox, Reply reply) {
        Instant now = clock.instant();
        String from = new SmppAddress(unit.getSourceAddrTon(), unit.getSourceAddrNpi(), unit.getSourceAddr())
                .international(home);
        IncomingText text = IncomingText.of(unit);
        if (text.part().isEmpty()) {
            reply.kept(keep(from, text.text(), "", inbox, reply, now));
            return;
        }
        part(new Part(from, text.part().get()), text.text(), inbox, reply, now);
    }

    /** Whose it is and which. */
    private record Part(String from, Concatenation place) {

        String text() {
            return from + " " + place.reference() + "/" + place.total();
        }
    }

    private void part(Part part, String words, Inbox inbox, Reply reply, Instant now) {
        Joining.Joined joined = joined(part, words, reply, now);
        switch (joined.state()) {
            case WAITS -> {}
            case KEPT_BEFORE -> reply.kept(true);
            case WHOLE -> whole(part, joined.text(), inbox, reply, now);
        }
    }

    private void whole(Part part, String text, Inbox inbox, Reply last, Instant now) {
        // From now on nobody loses patience: the inbox decides about them all.
        List<Reply> all = release(part.text());
        all.add(last);
        boolean kept = false;
        try {
            kept = keep(part.from(), text, part.text(), inbox, last, now);
            if (kept) {
                joining.kept(part.from(), part.place(), now);
            }
        } finally {
            boolean answer = kept;
            all.forEach(reply -> reply.kept(answer));
        }
    }

    /** In one go: else the last part could be dealt with before an earlier one waits for it. */
    private synchronized Joining.Joined joined(Part part, String words, Reply reply, Instant now) {
        Joining.Joined joined = joining.add(part.from(), part.place(), words, now);
        if (joined.state() == Joining.State.WAITS) {
            hold(part.text(), reply);
        }
        return joined;
    }

    private boolean keep(String from, String text, String which, Inbox inbox, Reply reply, Instant now) {
        String words = digest(from + "\n" + which + "\n" + text);
        String id = identities.of(words, reply.session(), now);
        boolean kept = inbox.take(new Incoming(SmppChannel.NAME, id, from, text, now));
        if (kept) {
            identities.taken(words, reply.session(), now);
        }
        return kept;
    }

    private void hold(String text, Reply reply) {
        held.computeIfAbsent(text, any -> new ArrayList<>()).add(reply);
        try {
            timer.schedule(() -> giveUp(text, reply), PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            // Closed: it stays with the centre.
            reply.kept(false);
        }
    }

    private void giveUp(String text, Reply reply) {
        if (forget(text, reply)) {
            reply.kept(true);
        }
    }

    private synchronized boolean forget(String text, Reply reply) {
        List<Reply> waiting = held.get(text);
        boolean was = waiting != null && waiting.remove(reply);
        if (was && waiting.isEmpty()) {
            held.remove(text);
        }
        return was;
    }

    private synchronized List<Reply> release(String text) {
        List<Reply> waiting = held.remove(text);
        return waiting == null ? new ArrayList<>() : waiting;
    }

    private static String digest(String words) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(words.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
