package yardlight.gateway.dispatch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Stimulus;
import yardlight.gateway.lane.Intake;

/** Tells the engine of notices that no carrier took in time, each once for each line. */
final class Late {

    private static final int PAGE = 5_000;
    private static final Duration LEAST = Duration.ofNanos(1_000);

    private final Sending sending;
    private final Intake intake;
    private final Duration within;
    private Instant told = Instant.EPOCH;

    /** @param within how long a carrier has to take a notice */
    Late(Sending sending, Intake intake, Duration within) {
        this.sending = sending;
        this.intake = intake;
        this.within = within;
    }

    void look() {
        Instant until = sending.clock().instant().minus(within);
        List<Outgoing> late = sending.outbox().waiting(told(), until, PAGE);
        // A clock that was put back: what gets in from now on is older than what was told of last.
        told(until);
        if (late.size() == PAGE) {
            told(upTo(late));
        }
        late.forEach(this::tell);
    }

    /** Of those that got in together with the last one there may be more on the next page. */
    private static Instant upTo(List<Outgoing> page) {
        Instant first = page.get(0).queuedAt();
        Instant last = page.get(page.size() - 1).queuedAt();
        return first.isBefore(last) ? last.minus(LEAST) : last;
    }

    private void tell(Outgoing outgoing) {
        var overdue = new Stimulus.Overdue(outgoing.id(), outgoing.notice().line());
        intake.put(overdue).whenComplete((answer, failure) -> {
            if (failure != null) {
                again(outgoing.queuedAt().minus(LEAST));
            }
        });
    }

    private synchronized Instant told() {
        return told;
    }

    private synchronized void told(Instant until) {
        told = until;
    }

    /** The lane takes nothing at present. */
    private synchronized void again(Instant from) {
        told = from.isBefore(told) ? from : told;
    }
}
