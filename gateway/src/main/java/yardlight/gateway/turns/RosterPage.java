package yardlight.gateway.turns;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Sent;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** The form for a roster, new or known. A button that adds or moves a row sends it as well, and stores nothing. */
@Controller
class RosterPage {

    private static final String WORDS = "turns";
    private static final String SAVE = "save";
    private static final String REMOVE = "remove";

    /** Somebody who may be in the order, by the word of the setup. */
    record Choice(String word, String name) {}

    private final RosterDesk desk;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    RosterPage(RosterDesk desk, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/new-roster", produces = "text/html")
    ModelAndView blank(Locale locale) {
        String start =
                LocalDate.ofInstant(clock.instant(), zone("")).atTime(7, 0).toString();
        return form(RosterForm.blank(desk.seen(), start), Notes.NONE, HttpStatus.OK, locale);
    }

    @PostMapping("/new-roster")
    ModelAndView make(
            @RequestParam(name = "do", defaultValue = SAVE) String step, Locale locale, HttpServletRequest request) {
        return done(RosterForm.of("", request.getParameterMap()), step, locale, request);
    }

    @GetMapping(path = "/turns/{id}/edit", produces = "text/html")
    ModelAndView open(@PathVariable String id, Locale locale) {
        RosterDesk.Open open = desk.open(id);
        return form(RosterForm.of(open.seen(), open.piece()), Notes.NONE, HttpStatus.OK, locale);
    }

    @PostMapping("/turns/{id}/edit")
    ModelAndView change(
            @PathVariable String id,
            @RequestParam(name = "do", defaultValue = SAVE) String step,
            Locale locale,
            HttpServletRequest request,
            Principal login) {
        RosterForm form = RosterForm.of(id, request.getParameterMap());
        return step.equals(REMOVE) ? removed(form, locale, login) : done(form, step, locale, request);
    }

    private ModelAndView removed(RosterForm form, Locale locale, Principal login) {
        var tongue = new Tongue(words, locale);
        List<String> reasons = desk.named(form.id()).stream()
                .map(place -> place.rung() > 0
                        ? tongue.say("turns.on.ladder", place.id(), place.rung())
                        : tongue.say("turns.on.roster", place.id()))
                .toList();
        if (!reasons.isEmpty()) {
            return form(form, Notes.NONE, HttpStatus.CONFLICT, locale).addObject("reasons", reasons);
        }
        Saved saved = desk.remove(form.seen(), form.id(), login.getName());
        return answered(saved, form, Piece.none(Part.ROSTERS, form.id()), locale);
    }

    private ModelAndView done(RosterForm form, String step, Locale locale, HttpServletRequest request) {
        if (!step.equals(SAVE)) {
            return form(form.after(step), Notes.NONE, HttpStatus.OK, locale);
        }
        Piece wish = desk.wish(form);
        String agreed = Sent.text(request.getParameterMap(), "agreed");
        return answered(desk.save(form.seen(), wish, request.getRemoteUser(), agreed), form, wish, locale);
    }

    private ModelAndView answered(Saved saved, RosterForm form, Piece wish, Locale locale) {
        var tongue = new Tongue(words, locale);
        if (saved instanceof Saved.Wrong wrong) {
            return form(form, Notes.of(wrong, wish, tongue, WORDS), HttpStatus.UNPROCESSABLE_CONTENT, locale);
        }
        if (saved instanceof Saved.Overtaken overtaken) {
            var clockface = new Clockface(zone(form.id()), clock.instant(), locale);
            Notes notes = Notes.of(overtaken, new Names(inForce.setup()), clockface, tongue, WORDS);
            return form(form.seeing(overtaken.version()), notes, HttpStatus.CONFLICT, locale);
        }
        if (saved instanceof Saved.Opens opens) {
            return form(form, Notes.of(opens, tongue), HttpStatus.CONFLICT, locale);
        }
        return new ModelAndView(SwapPage.back());
    }

    /** That of the roster, or of the first site. */
    private ZoneId zone(String roster) {
        Setup setup = inForce.setup();
        return Optional.ofNullable(setup.rosters().get(roster))
                .map(Roster::zone)
                .or(() -> setup.sites().values().stream().findFirst().map(site -> site.zone()))
                .orElse(ZoneOffset.UTC);
    }

    private ModelAndView form(RosterForm form, Notes notes, HttpStatus status, Locale locale) {
        var page = new ModelAndView("roster-edit");
        page.setStatus(status);
        return page.addObject("form", form)
                .addObject("notes", notes)
                .addObject("units", RosterForm.UNITS)
                .addObject("choices", choices(form.id(), new Tongue(words, locale)))
                .addObject("reasons", List.of());
    }

    private List<Choice> choices(String own, Tongue tongue) {
        Setup setup = inForce.setup();
        var choices = new ArrayList<Choice>();
        setup.contacts().values().forEach(one -> choices.add(new Choice(one.id(), one.name())));
        setup.rosters().keySet().stream()
                .filter(other -> !other.equals(own))
                .forEach(other -> choices.add(new Choice(Rung.ROSTER + other, tongue.say("turns.roster", other))));
        return List.copyOf(choices);
    }
}
