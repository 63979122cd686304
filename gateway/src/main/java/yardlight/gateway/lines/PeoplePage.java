package yardlight.gateway.lines;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import org.springframework.web.util.UriComponentsBuilder;
import yardlight.db.alarm.Told;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;

/** The people who can be called, the page of each of them, and the buttons that try their lines. */
@Controller
class PeoplePage {

    private static final Duration LATELY = Duration.ofDays(14);
    private static final int MOST_TOLD = 25;

    private final PeopleLines people;
    private final Told told;
    private final MessageSource words;
    private final InstantSource clock;

    PeoplePage(PeopleLines people, Told told, MessageSource words, InstantSource clock) {
        this.people = people;
        this.told = told;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/people", produces = "text/html")
    ModelAndView all(Locale locale) {
        Map<LineHealth.Key, LineHealth> known = people.known();
        var rows = new PeopleRows(new Tongue(words, locale), clock.instant());
        List<PeopleRows.Row> list = people.all().stream()
                .map(contact -> rows.of(contact, KnownLines.of(contact, known)))
                .toList();
        return new ModelAndView("people").addObject("rows", list);
    }

    @GetMapping(path = "/people/{id}", produces = "text/html")
    ModelAndView one(@PathVariable String id, Locale locale, HttpServletRequest request) {
        return sheet(id, locale, request);
    }

    private ModelAndView sheet(String id, Locale locale, HttpServletRequest request) {
        Contact contact = people.one(id);
        Instant now = clock.instant();
        var sheets = new PersonSheets(new Tongue(words, locale), new Clockface(contact.zone(), now, locale));
        List<Told.Sent> sent = told.to(id, now.minus(LATELY), MOST_TOLD);
        return new ModelAndView("person")
                .addObject("sheet", sheets.of(contact, people.lines(contact, request), sent))
                .addObject("refusedLine", 0)
                .addObject("refused", "");
    }

    /** Where it stood before. */
    @GetMapping("/contacts/{id}")
    View moved(@PathVariable String id) {
        return to("/people/{id}", id);
    }

    /**
     * Sends a test, and shows why not if the rules refuse it.
     *
     * @param back {@code paths} for whoever comes from that page
     */
    @PostMapping("/people/{id}/lines/{line}/test")
    ModelAndView test(
            @PathVariable String id,
            @PathVariable String line,
            @RequestParam(defaultValue = "") String back,
            Locale locale,
            HttpServletRequest request,
            Principal login) {
        try {
            people.test(id, line, login.getName());
            return new ModelAndView(back.equals("paths") ? to("/paths") : to("/people/{id}", id));
        } catch (Problem refused) {
            if (refused.status() != HttpStatus.CONFLICT) {
                throw refused;
            }
            ModelAndView page = sheet(id, locale, request);
            page.setStatus(HttpStatus.CONFLICT);
            var clockface = new Clockface(people.one(id).zone(), clock.instant(), locale);
            String why = new Tongue(words, locale).say(refused.sentence(), clockface);
            return page.addObject("refusedLine", Integer.parseInt(line)).addObject("refused", why);
        }
    }

    /** Sends a browser on after a form was done, so that loading again does nothing twice. */
    static RedirectView to(String path, Object... values) {
        var view = new RedirectView(
                UriComponentsBuilder.fromPath(path)
                        .buildAndExpand(values)
                        .encode()
                        .toUriString(),
                true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }
}
