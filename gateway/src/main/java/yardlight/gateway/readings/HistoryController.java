package yardlight.gateway.readings;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Sample;
import yardlight.gateway.document.Query;
import yardlight.gateway.measure.Archive;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Gives back what was measured. */
@RestController
class HistoryController {

    private static final int USUAL = 500;
    private static final int MOST = 5_000;
    private static final String MOST_RULE = "must be a whole number from 1 to " + MOST;
    private static final Duration A_DAY = Duration.ofDays(1);

    private final Archive archive;
    private final InstantSource clock;

    HistoryController(Archive archive, InstantSource clock) {
        this.archive = archive;
        this.clock = clock;
    }

    /** What somebody wants to see: half-open, the last day unless they say. */
    private record Wanted(String site, String point, Instant from, Instant to, int most) {}

    @GetMapping(path = "/api/v1/readings", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> readings(HttpServletRequest request) {
        Wanted wanted = wanted(new Query(request));
        Curve curve = archive.series(wanted.site(), wanted.point(), wanted.from(), wanted.to(), wanted.most());
        var members = new LinkedHashMap<String, Object>();
        members.put("site", wanted.site());
        members.put("point", wanted.point());
        curve.unit().ifPresent(unit -> members.put("unit", unit));
        members.put("from", wanted.from());
        members.put("to", wanted.to());
        members.put(
                "samples",
                curve.samples().stream().map(HistoryController::members).toList());
        return members;
    }

    private Wanted wanted(Query query) {
        Optional<String> site = query.text("site");
        Optional<String> point = query.text("point");
        Instant to = query.instant("to").orElseGet(clock::instant);
        Instant from = query.instant("from").orElseGet(() -> to.minus(A_DAY));
        int most = query.as("points", MOST_RULE, HistoryController::most).orElse(USUAL);
        query.orNothing();
        if (site.isEmpty() || point.isEmpty()) {
            throw Problem.invalid(Fault.inQuery(site.isEmpty() ? "site" : "point", "must be there"));
        }
        if (!from.isBefore(to)) {
            throw Problem.invalid(Fault.inQuery("from", "must be before to"));
        }
        return new Wanted(site.get(), point.get(), from, to, most);
    }

    private static Optional<Integer> most(String text) {
        return Optional.of(text)
                .filter(number -> number.matches("\\d{1,6}"))
                .map(Integer::valueOf)
                .filter(number -> number >= 1 && number <= MOST);
    }

    private static Map<String, Object> members(Sample sample) {
        var members = new LinkedHashMap<String, Object>();
        members.put("at", sample.at());
        if (sample.count() == 1) {
            members.put("value", sample.mean());
            return members;
        }
        members.put("min", sample.min());
        members.put("max", sample.max());
        members.put("mean", sample.mean());
        members.put("count", sample.count());
        return members;
    }
}
