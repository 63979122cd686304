package yardlight.gateway.suggest;

import jakarta.servlet.http.HttpServletRequest;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.rehearsal.Replay;
import yardlight.escalation.rehearsal.Suggestions;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** What a point would have called in the last 30 days, for programs. */
@RestController
class SuggestionsController {

    private final Suggesting suggesting;

    SuggestionsController(Suggesting suggesting) {
        this.suggesting = suggesting;
    }

    /** The answer: since when readings were replayed, how many, and what came of it in each way to set the point up. */
    record Replayed(String site, String point, Instant from, int readings, List<Map<String, Object>> suggestions) {}

    @GetMapping(path = "/api/v1/suggestions", produces = MediaType.APPLICATION_JSON_VALUE)
    Replayed suggestions(HttpServletRequest request) {
        var query = new Query(request);
        String site = needed(query, "site");
        String point = needed(query, "point");
        Suggesting.Found found = suggesting.of(site, point);
        return new Replayed(
                site,
                point,
                found.from(),
                found.readings(),
                found.suggestions().stream().map(SuggestionsController::members).toList());
    }

    private static String needed(Query query, String name) {
        return query.text(name).orElseThrow(() -> Problem.invalid(Fault.inQuery(name, "must be there")));
    }

    private static Map<String, Object> members(Suggestions.Suggestion one) {
        var members = new LinkedHashMap<String, Object>();
        members.put("asIs", one.asIs());
        members.put("onDelay", one.onDelay().toString());
        Optional<BigDecimal> deadband = one.deadband();
        deadband.ifPresent(band -> members.put("deadband", band));
        members.put("count", one.calls().size());
        members.put(
                "calls",
                one.calls().stream().map(SuggestionsController::members).toList());
        return members;
    }

    private static Map<String, Object> members(Replay.Called called) {
        var members = new LinkedHashMap<String, Object>();
        members.put("condition", called.condition());
        members.put("at", called.at());
        called.over().ifPresent(over -> members.put("over", over));
        return members;
    }
}
