package yardlight.gateway.lines;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.proof.LineHealth;

/**
 * A line in the form of the contract. What there is not is left out.
 *
 * @param line its place in the contact's list, from 1 on
 * @param proven whether a receipt or an answer showed within 30 days that it works
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record LineView(
        String contact,
        int line,
        String channel,
        String address,
        boolean proven,
        Optional<Instant> handedOverAt,
        Optional<Instant> deliveredAt,
        Optional<Instant> answeredAt,
        Optional<Instant> troubleAt,
        Optional<String> trouble,
        Optional<TestView> test) {

    static LineView of(KnownLine known, Instant now) {
        LineHealth line = known.health();
        return new LineView(
                line.key().contact(),
                known.place() + 1,
                line.key().channel(),
                known.address(),
                line.proven(now),
                line.handedOverAt(),
                line.deliveredAt(),
                line.answeredAt(),
                line.trouble().map(LineHealth.Trouble::at),
                line.trouble().map(LineHealth.Trouble::words),
                line.test().map(test -> new TestView(test.at(), test.answered())));
    }

    /** The newest test of it. */
    record TestView(Instant at, boolean answered) {}
}
