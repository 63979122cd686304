package yardlight.gateway.alarms;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.alarm.AlarmFilter;
import yardlight.db.alarm.Alarms;
import yardlight.escalation.alarm.AlarmState;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Problem;

/** Shows alarms: the newest 1000 that fit, newest first. */
@RestController
@RequestMapping(path = "/api/v1/alarms", produces = MediaType.APPLICATION_JSON_VALUE)
class AlarmsController {

    private static final String STATES = String.join(
            ", ", Stream.of(AlarmState.values()).map(AlarmState::word).toList());

    private final Alarms alarms;
    private final AlarmViews views;
    private final Sight sight;

    AlarmsController(Alarms alarms, AlarmViews views, Sight sight) {
        this.alarms = alarms;
        this.views = views;
        this.sight = sight;
    }

    @GetMapping
    List<AlarmView> find(HttpServletRequest request) {
        var query = new Query(request);
        var filter = new AlarmFilter(
                query.text("site"),
                query.as("state", "must be one of " + STATES, AlarmsController::state),
                query.instant("from"),
                query.instant("to"),
                AlarmFilter.MOST);
        query.orNothing();
        return views.of(alarms.find(filter), sight.of(request));
    }

    @GetMapping("/{id}")
    AlarmView one(@PathVariable String id, HttpServletRequest request) {
        return alarms.byId(id)
                .map(alarm -> views.of(alarm, sight.of(request)))
                .orElseThrow(() -> Problem.notFound("there is no such alarm"));
    }

    private static Optional<AlarmState> state(String word) {
        return Stream.of(AlarmState.values())
                .filter(state -> state.word().equals(word))
                .findFirst();
    }
}
