package yardlight.gateway.dispatch;

import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.setup.Line;

/**
 * Looks after notices that no channel takes: whose channel is not set up waits, and that is said once; who has no such
 * line any more is told to the engine, which goes on to the next.
 */
final class Stranded {

    private static final Logger LOG = LoggerFactory.getLogger(Stranded.class);
    private static final int MOST = 100;

    private final Outbox outbox;
    private final Lines lines;
    private final Sending sending;
    private final InstantSource clock;
    private final Set<String> said = new HashSet<>();

    Stranded(Outbox outbox, Lines lines, Sending sending, InstantSource clock) {
        this.outbox = outbox;
        this.lines = lines;
        this.sending = sending;
        this.clock = clock;
    }

    /**
     * @param served the channels that take notices now
     */
    void look(List<String> served) {
        for (Outgoing outgoing : outbox.claimOthers(served, clock.instant(), MOST)) {
            Optional<Line> line = lines.of(outgoing.notice());
            if (line.isEmpty() || served.contains(line.get().channel())) {
                sending.send(outgoing, () -> {});
            } else {
                say(line.get().channel());
                outbox.giveBack(outgoing);
            }
        }
        said.removeAll(served);
    }

    private void say(String channel) {
        if (said.add(channel)) {
            LOG.warn("notices by {} wait: it is not set up", channel);
        }
    }
}
