package yardlight.gateway.coversheet;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.setup.Site;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.Outlook;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Whom alarms of a site would reach, and when nobody. */
@RestController
class CoverageController {

    private static final Duration USUAL = Duration.ofDays(7);

    private final Coverages coverages;
    private final SetupInForce inForce;
    private final InstantSource clock;

    CoverageController(Coverages coverages, SetupInForce inForce, InstantSource clock) {
        this.coverages = coverages;
        this.inForce = inForce;
        this.clock = clock;
    }

    @GetMapping(path = "/api/v1/coverage", produces = MediaType.APPLICATION_JSON_VALUE)
    CoverageView find(HttpServletRequest request) {
        var query = new Query(request);
        Optional<Site> site = query.as(
                "site",
                "must be a site of the setup",
                id -> Optional.ofNullable(inForce.setup().sites().get(id)));
        Optional<Priority> priority = query.as("priority", "must be low, medium, high or critical", Priority::of);
        Instant from = query.instant("from").orElseGet(clock::instant);
        Instant to = query.instant("to").orElseGet(() -> from.plus(USUAL));
        query.orNothing();
        if (site.isEmpty()) {
            throw Problem.invalid(Fault.inQuery("site", "must be there"));
        }
        if (!from.isBefore(to) || Duration.between(from, to).compareTo(Outlook.AHEAD) > 0) {
            throw Problem.invalid(Fault.inQuery("to", "must be after from, by 400 days at most"));
        }
        Set<Priority> priorities = priority.map(EnumSet::of).orElseGet(() -> EnumSet.allOf(Priority.class));
        return view(site.get(), priorities, from, to);
    }

    private CoverageView view(Site site, Set<Priority> priorities, Instant from, Instant to) {
        List<CoverageView.Covered> covered = site.inService()
                ? coverages.ask(from, to, found -> CoverageView.of(found, site.id(), priorities))
                : List.of();
        return new CoverageView(site.id(), from, to, site.inService(), covered);
    }
}
