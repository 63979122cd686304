package yardlight.gateway.rehearsal;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.rehearsal.PastNights;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.stage.Seasons;

/** Plays past nights once more: with the setup that holds, or with one that comes along and is not stored. */
@RestController
class NightsController {

    /** What is being played is soon over. Ours. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final SetupInForce inForce;
    private final Seasons seasons;
    private final SetupReader reader;

    NightsController(SetupInForce inForce, Seasons seasons, SetupReader reader) {
        this.inForce = inForce;
        this.seasons = seasons;
        this.reader = reader;
    }

    @PostMapping(path = "/api/v1/rehearsals/nights", produces = MediaType.APPLICATION_JSON_VALUE)
    NightsView play(HttpServletRequest request) throws IOException {
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults).needs("from", "to");
        Setup setup = fields.part("setup")
                .flatMap(part -> reader.read(part, fields.pointer("setup"), faults))
                .orElseGet(inForce::setup);
        Optional<Instant> from = fields.instant("from");
        Optional<Instant> to = fields.instant("to");
        from.ifPresent(first -> to.ifPresent(last -> length(fields, first, last)));
        Optional<String> site = fields.as(
                "site", "must be a site of the setup", id -> Optional.of(id).filter(setup.sites()::containsKey));
        Map<String, Duration> answers = new QuestionReader(setup, Instant.EPOCH).answers(fields);
        fields.nothingElse();
        faults.orNothing();
        Seasons.Played played = seasons.play(setup, site.map(Set::of), from.orElseThrow(), to.orElseThrow(), answers);
        if (played instanceof Seasons.Compared compared) {
            return NightsView.of(from.get(), to.get(), site, compared);
        }
        throw refused((Seasons.NotPlayed) played, fields.pointer("from"));
    }

    private static void length(Fields fields, Instant from, Instant to) {
        if (!from.isBefore(to)) {
            fields.fault("from", "must be before to: " + from);
        } else if (Duration.between(from, to).compareTo(Seasons.LONGEST) > 0) {
            fields.fault("from", "must be at most 400 days before to: " + from);
        }
    }

    private static Problem refused(Seasons.NotPlayed why, String pointer) {
        return switch (why) {
            case ALARMS ->
                Problem.invalid(Fault.at(
                        pointer,
                        "must be so near to to that at most " + Seasons.MOST_ALARMS + " alarms called in between"));
            case TEXTS ->
                Problem.invalid(Fault.at(
                        pointer,
                        "must be so near to to that at most " + PastNights.MOST_TEXTS + " texts would go out"));
            case BUSY -> Problem.later(HttpStatus.SERVICE_UNAVAILABLE, "another past season is being played", PATIENCE);
        };
    }
}
