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
import org.jsmpp.bean.DeliverSm;
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

    void take(DeliverSm unit, Inbox inbox, Reply reply) {
        Instant now = clock.instant();
        String from = new SmppAddress(unit.getSourceAddrTon(), unit.getSourceAddrNpi(), unit.getSourceAddr())
                .international(home);
        IncomingText text = IncomingText.of(unit);
        if (text.part().isEmpty()) {
            reply.kept(keep(from, text.text(), "", inbox, reply, now));
            return;
        }
        Concatenation part = text.part().get();
        String which = part.reference() + "/" + part.total();
        Optional<String> whole = joining.add(from, part, text.text(), now);
        if (whole.isEmpty()) {
            hold(from + " " + which, reply);
            return;
        }
        boolean kept = keep(from, whole.get(), which, inbox, reply, now);
        if (kept) {
            joining.done(from, part);
        }
        reply.kept(kept);
        release(from + " " + which).forEach(earlier -> earlier.kept(kept));
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

    private synchronized void hold(String text, Reply reply) {
        held.computeIfAbsent(text, any -> new ArrayList<>()).add(reply);
        try {
            timer.schedule(() -> giveUp(text, reply), PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            // Closed: it stays with the centre.
            giveUp(text, reply);
        }
    }

    private void giveUp(String text, Reply reply) {
        synchronized (this) {
            List<Reply> waiting = held.get(text);
            if (waiting != null && waiting.remove(reply) && waiting.isEmpty()) {
                held.remove(text);
            }
        }
        reply.kept(true);
    }

    private synchronized List<Reply> release(String text) {
        List<Reply> waiting = held.remove(text);
        return waiting == null ? List.of() : waiting;
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
