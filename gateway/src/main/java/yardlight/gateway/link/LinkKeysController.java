package yardlight.gateway.link;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.time.Instant;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.people.DoorLog;

/** The owner has the links in texts made with another key. It is shown to nobody. */
@RestController
@RequestMapping(path = "/api/v1/link-keys", produces = MediaType.APPLICATION_JSON_VALUE)
class LinkKeysController {

    private final LinkKeys keys;
    private final DoorLog log;

    LinkKeysController(LinkKeys keys, DoorLog log) {
        this.keys = keys;
        this.log = log;
    }

    /**
     * A key without itself.
     *
     * @param from since when links are made with it
     */
    record Made(Instant from) {}

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    Made make(HttpServletRequest request, Principal by) throws IOException {
        boolean end = endOthers(request);
        Instant from = end ? keys.instead() : keys.another();
        log.say(
                by.getName(),
                by.getName() + " made another key for links; those in texts that are out "
                        + (end ? "work no more" : "keep working"));
        return new Made(from);
    }

    private static boolean endOthers(HttpServletRequest request) throws IOException {
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields said = document.fields(faults);
        boolean end = said.flag("endOthers").orElse(false);
        said.nothingElse();
        faults.orNothing();
        return end;
    }
}
