package yardlight.gateway.reports;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.gateway.problem.Problem;

/** Has one report made at a time, of whichever kind: each of them may hold a good part of a small heap. */
@Component
class OneReport {

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final Semaphore one = new Semaphore(1);

    /** @throws Problem 503 while another one is made */
    <T> T make(Supplier<T> report) {
        if (!one.tryAcquire()) {
            throw Problem.later(HttpStatus.SERVICE_UNAVAILABLE, "another report is being made", PATIENCE);
        }
        try {
            return report.get();
        } finally {
            one.release();
        }
    }
}
