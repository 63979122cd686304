package yardlight.gateway.lines;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.proof.LineHealth;
import yardlight.gateway.document.Query;

/** Shows what is known of people's lines, and tries one. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
class LinesController {

    private final PeopleLines people;
    private final InstantSource clock;

    LinesController(PeopleLines people, InstantSource clock) {
        this.people = people;
        this.clock = clock;
    }

    @GetMapping("/lines")
    List<LineView> find(HttpServletRequest request) {
        var query = new Query(request);
        Optional<String> wanted = query.text("contact");
        query.orNothing();
        Instant now = clock.instant();
        Map<LineHealth.Key, LineHealth> known = people.known();
        return people.all().stream()
                .filter(contact -> wanted.isEmpty() || wanted.get().equals(contact.id()))
                .flatMap(contact -> people.lines(contact, KnownLines.of(contact, known), request).stream())
                .map(line -> LineView.of(line, now))
                .toList();
    }

    @PostMapping("/contacts/{id}/lines/{line}/test")
    @ResponseStatus(HttpStatus.ACCEPTED)
    LineView test(@PathVariable String id, @PathVariable String line, HttpServletRequest request, Principal login) {
        int place = people.test(id, line, login.getName());
        return LineView.of(people.lines(people.one(id), request).get(place), clock.instant());
    }
}
