package yardlight.gateway.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One try to tell one person by one path, or that there was none.
 *
 * @param contact id
 * @param purpose {@code call}, or {@code news} for what they hear afterwards
 * @param channel empty when no line was tried
 * @param queuedAt when the notice was made
 * @param handedOverAt when a carrier took it
 * @param deliveredAt when a carrier said that it arrived
 * @param outcome {@code accepted}, {@code refused}, {@code deferred} or {@code unknown}; the state of the notice when
 *     nothing was tried
 * @param detail the carrier's own words, without addresses
 * @param lines those of the log that tell of the notice
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record ToldRow(
        String notice,
        String contact,
        String name,
        String purpose,
        Optional<String> channel,
        Instant queuedAt,
        Optional<Instant> triedAt,
        Optional<Instant> handedOverAt,
        Optional<Instant> deliveredAt,
        String outcome,
        String detail,
        List<Long> lines) {

    boolean call() {
        return purpose.equals("call");
    }
}
