package yardlight.gateway.lines;

import java.security.Principal;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Asks before somebody is taken out of the setup, and says what goes with them or what is in the way. */
@Controller
class LeavingPage {

    private final PersonDesk desk;
    private final PeopleLines people;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    LeavingPage(PersonDesk desk, PeopleLines people, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.people = people;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/people/{id}/remove", produces = "text/html")
    ModelAndView ask(@PathVariable String id, Locale locale) {
        return page(id, Notes.NONE, HttpStatus.OK, locale);
    }

    @PostMapping("/people/{id}/remove")
    ModelAndView remove(
            @PathVariable String id,
            @RequestParam(defaultValue = "0") String seen,
            @RequestParam(defaultValue = "") String agreed,
            Locale locale,
            Principal login) {
        int version = seen.matches("\\d{1,9}") ? Integer.parseInt(seen) : 0;
        Saved saved = desk.leave(version, desk.farewell(id).leaving(), login.getName(), agreed);
        if (saved instanceof Saved.Stored) {
            return new ModelAndView(PeoplePage.to("/people"));
        }
        return page(id, notes(id, saved, locale), HttpStatus.CONFLICT, locale);
    }

    private Notes notes(String id, Saved saved, Locale locale) {
        var tongue = new Tongue(words, locale);
        if (saved instanceof Saved.Overtaken overtaken) {
            var clockface = new Clockface(people.one(id).zone(), clock.instant(), locale);
            return Notes.of(overtaken, new Names(inForce.setup()), clockface, tongue, "people");
        }
        if (saved instanceof Saved.Opens opens) {
            return Notes.of(opens, tongue);
        }
        return saved instanceof Saved.Wrong wrong
                ? new Notes(
                        Notes.NONE.wrong(),
                        wrong.mistakes().stream()
                                .map(mistake -> tongue.say(mistake.rule()))
                                .toList(),
                        "",
                        List.of())
                : Notes.NONE;
    }

    private ModelAndView page(String id, Notes notes, HttpStatus status, Locale locale) {
        PersonDesk.Farewell farewell = desk.farewell(id);
        var tongue = new Tongue(words, locale);
        var page = new ModelAndView("person-remove");
        page.setStatus(status);
        return page.addObject("id", id)
                .addObject("name", new Names(inForce.setup()).contact(id))
                .addObject("seen", farewell.seen())
                .addObject("notes", notes)
                .addObject("ways", said(farewell.leaving().ways(), tongue))
                .addObject("reasons", said(farewell.leaving().reasons(), tongue));
    }

    private static List<String> said(List<Leaving.Place> places, Tongue tongue) {
        return places.stream()
                .map(place -> place.part() == Part.LADDERS
                        ? tongue.say("people.on.ladder", place.id(), place.rung())
                        : tongue.say("people.on.roster", place.id()))
                .toList();
    }
}
