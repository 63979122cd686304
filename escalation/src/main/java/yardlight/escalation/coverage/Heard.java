package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Who hears of an alarm, and when. One of the two times is there: people who are called as the ladder goes on hear so long
 * after the alarm, whenever in the stretch it comes; people who are left to sleep hear when they may be disturbed again.
 *
 * @param after from the alarm on
 * @param at the end of their quiet hours
 */
public record Heard(String contact, Optional<Duration> after, Optional<Instant> at) {

    public Heard {
        if (after.isPresent() == at.isPresent()) {
            throw new IllegalArgumentException("heard must have one time: " + contact);
        }
    }

    static Heard after(String contact, Duration after) {
        return new Heard(contact, Optional.of(after), Optional.empty());
    }

    static Heard at(String contact, Instant at) {
        return new Heard(contact, Optional.empty(), Optional.of(at));
    }

    /** When that is for an alarm that comes at this instant. */
    public Instant when(Instant alarm) {
        return at.orElseGet(() -> alarm.plus(after.orElseThrow()));
    }
}
