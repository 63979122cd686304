package yardlight.gateway.alarms;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.setup.SetupInForce;

/** What people do to an alarm. Each action answers with the alarm as it is afterwards. */
@RestController
@RequestMapping(path = "/api/v1/alarms/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class ActionsController {

    /** The engine has the same limit, and the last word. */
    private static final Duration LONGEST_SHELF = Duration.ofDays(7);

    private final Actions actions;
    private final SetupInForce inForce;
    private final Notes notes;
    private final AlarmViews views;
    private final Sight sight;

    ActionsController(Actions actions, Notes notes, SetupInForce inForce, AlarmViews views, Sight sight) {
        this.notes = notes;
        this.views = views;
        this.sight = sight;
        this.actions = actions;
        this.inForce = inForce;
    }

    @PostMapping("/acknowledge")
    AlarmView acknowledge(@PathVariable String id, HttpServletRequest request, Principal login) throws IOException {
        return act(id, request, fields -> {
            String by = contact(fields).orElse(login.getName());
            Optional<String> note = fields.text("note", Notes.LONGEST);
            return key -> new Stimulus.Acknowledge(key, by, "api", note);
        });
    }

    private Optional<String> contact(Fields fields) {
        return fields.as(
                "contact",
                "must be a contact of the setup",
                id -> Optional.of(id).filter(inForce.setup().contacts()::containsKey));
    }

    @PostMapping("/shelve")
    AlarmView shelve(@PathVariable String id, HttpServletRequest request, Principal login) throws IOException {
        return act(id, request, fields -> {
            fields.needs("for", "reason");
            Optional<Duration> length = fields.duration("for", Duration.ofSeconds(1), LONGEST_SHELF);
            Optional<String> reason = fields.text("reason", Notes.LONGEST);
            if (reason.filter(String::isEmpty).isPresent()) {
                fields.fault("reason", "must say something");
            }
            return key -> new Stimulus.Shelve(key, length.orElseThrow(), reason.orElseThrow(), login.getName());
        });
    }

    @PostMapping("/unshelve")
    AlarmView unshelve(@PathVariable String id, HttpServletRequest request, Principal login) throws IOException {
        return act(id, request, fields -> key -> new Stimulus.Unshelve(key, login.getName()));
    }

    @PostMapping("/reset")
    AlarmView reset(@PathVariable String id, HttpServletRequest request, Principal login) throws IOException {
        return act(id, request, fields -> key -> new Stimulus.Reset(key, login.getName()));
    }

    @PostMapping("/notes")
    AlarmView note(@PathVariable String id, HttpServletRequest request, Principal login) throws IOException {
        Optional<String> note = read(request, fields -> {
            Optional<String> text = fields.needs("note").text("note", Notes.LONGEST);
            if (text.filter(String::isEmpty).isPresent()) {
                fields.fault("note", "must say something");
            }
            return text;
        });
        notes.keep(id, note.orElseThrow(), login.getName());
        return views.of(actions.found(id), sight.of(request));
    }

    /** Reads the body by the given reader; nothing is done unless all of it is right. */
    private AlarmView act(String id, HttpServletRequest request, Function<Fields, Function<AlarmKey, Stimulus>> reader)
            throws IOException {
        return views.of(actions.act(id, read(request, reader)), sight.of(request));
    }

    private static <T> T read(HttpServletRequest request, Function<Fields, T> reader) throws IOException {
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults);
        T wanted = reader.apply(fields);
        fields.nothingElse();
        faults.orNothing();
        return wanted;
    }
}
