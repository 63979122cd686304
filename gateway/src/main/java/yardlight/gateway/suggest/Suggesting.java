package yardlight.gateway.suggest;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Semaphore;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Sample;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Suggestions;
import yardlight.escalation.setup.Point;
import yardlight.gateway.measure.Archive;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Replays the last 30 days of a point: for so long readings are kept whole. One replay at a time, for it costs a second. */
@Component
class Suggesting {

    static final Duration BACK = Duration.ofDays(30);

    /** More than one reading each 26 seconds is summed up: no rule needs more. */
    private static final int MOST = 100_000;

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** What was found of how many readings. */
    record Found(Instant from, int readings, List<Suggestions.Suggestion> suggestions) {}

    private final Archive archive;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final Semaphore one = new Semaphore(1);

    Suggesting(Archive archive, SetupInForce inForce, InstantSource clock) {
        this.archive = archive;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** @throws Problem 404 when there is no such point, 503 while another replay is under way */
    Found of(String site, String point) {
        Point known = inForce.setup()
                .known(site, point)
                .orElseThrow(() -> Problem.notFound("there is no such point in the setup"));
        if (!one.tryAcquire()) {
            throw Problem.later(HttpStatus.SERVICE_UNAVAILABLE, "another replay is under way", PATIENCE);
        }
        try {
            Instant now = clock.instant();
            Instant from = now.minus(BACK);
            List<Reading> readings = archive.series(site, point, from, now, MOST).samples().stream()
                    .map(sample -> reading(known, sample))
                    .toList();
            return new Found(from, readings.size(), Suggestions.of(known, readings));
        } finally {
            one.release();
        }
    }

    private static Reading reading(Point point, Sample sample) {
        return new Reading(point.site(), point.id(), sample.mean(), sample.at());
    }
}
