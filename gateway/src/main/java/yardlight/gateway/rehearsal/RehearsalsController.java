package yardlight.gateway.rehearsal;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;

/** Rehearses: with the setup that holds, or with one that comes along and is not stored. */
@RestController
class RehearsalsController {

    private final SetupInForce inForce;
    private final Alarms alarms;
    private final SetupReader reader;
    private final InstantSource clock;

    /** One at a time: a long ladder is a lot of work, and the alarms come first. */
    private final Semaphore stage = new Semaphore(1, true);

    RehearsalsController(SetupInForce inForce, Alarms alarms, SetupReader reader, InstantSource clock) {
        this.inForce = inForce;
        this.alarms = alarms;
        this.reader = reader;
        this.clock = clock;
    }

    @PostMapping(path = "/api/v1/rehearsals", produces = MediaType.APPLICATION_JSON_VALUE)
    List<Rehearsal.Line> rehearse(HttpServletRequest request) throws IOException {
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults);
        Setup setup = fields.part("setup")
                .flatMap(part -> reader.read(part, fields.pointer("setup"), faults))
                .orElseGet(inForce::setup);
        Optional<Rehearsal.Question> question = new QuestionReader(setup, clock.instant()).read(fields);
        fields.nothingElse();
        faults.orNothing();
        return play(setup, question.orElseThrow());
    }

    private List<Rehearsal.Line> play(Setup setup, Rehearsal.Question question) {
        stage.acquireUninterruptibly();
        try {
            return Rehearsal.of(setup, question, stops());
        } finally {
            stage.release();
        }
    }

    /** Who wants nothing more by a line now does not get a rehearsed text by it either. */
    private Set<AlarmKey> stops() {
        return Stop.among(alarms.current().stream().map(RecordedAlarm::alarm).toList());
    }
}
