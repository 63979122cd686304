package yardlight.gateway.dispatch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.setup.Line;

/**
 * Looks after notices that no channel takes: whose channel is not set up waits, and that is said once; who has no such
 * line any more is told to the engine, which goes on to the next.
 */
final class Stranded {

    private static final Logger LOG = LoggerFactory.getLogger(Stranded.class);
    private static final int PAGE = 100;
    private static final int MOST = 10_000;

    private final Sending sending;
    private final Set<String> said = new HashSet<>();

    Stranded(Sending sending) {
        this.sending = sending;
    }

    /**
     * @param open the counters that take notices now, by channel
     */
    void look(Map<String, Counter> open) {
        var waiting = new ArrayList<Outgoing>();
        try {
            int others;
            int found;
            do {
                int before = waiting.size();
                found = page(open, waiting);
                others = found - (waiting.size() - before);
            } while (found == PAGE && others == 0 && waiting.size() < MOST);
        } finally {
            waiting.forEach(sending.outbox()::giveBack);
        }
        said.removeAll(open.keySet());
    }

    /** What has to wait is held until the end, so that the next page is another one. Comes back with what was found. */
    private int page(Map<String, Counter> open, List<Outgoing> waiting) {
        List<Outgoing> page =
                sending.outbox().claimOthers(open.keySet(), sending.clock().instant(), PAGE);
        for (Outgoing outgoing : page) {
            Optional<Line> line = sending.lines().of(outgoing.notice());
            if (line.isEmpty()) {
                sending.send(outgoing, () -> {});
            } else if (open.containsKey(line.get().channel())) {
                open.get(line.get().channel()).take(outgoing);
            } else {
                say(line.get().channel());
                waiting.add(outgoing);
            }
        }
        return page.size();
    }

    private void say(String channel) {
        if (said.add(channel)) {
            LOG.warn("notices by {} wait: it is not set up", channel);
        }
    }
}
