package yardlight.gateway.rehearsal;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.stage.Stage;

/** Rehearses: with the setup that holds, or with one that comes along and is not stored. */
@RestController
class RehearsalsController {

    private final SetupInForce inForce;
    private final Stage stage;
    private final SetupReader reader;
    private final InstantSource clock;

    RehearsalsController(SetupInForce inForce, Stage stage, SetupReader reader, InstantSource clock) {
        this.inForce = inForce;
        this.stage = stage;
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
        return stage.play(setup, question.orElseThrow());
    }
}
