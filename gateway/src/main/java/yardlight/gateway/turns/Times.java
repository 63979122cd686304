package yardlight.gateway.turns;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.Optional;

/** Local times as browsers and setups write them. */
final class Times {

    private Times() {}

    /** Empty when it is none. */
    static Optional<LocalDateTime> of(String written) {
        try {
            return written.matches("\\d{4}-.{1,30}") ? Optional.of(LocalDateTime.parse(written)) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    static boolean same(String one, String other) {
        return one.equals(other) || of(one).isPresent() && of(one).equals(of(other));
    }
}
