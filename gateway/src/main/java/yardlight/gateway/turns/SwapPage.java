package yardlight.gateway.turns;

import java.security.Principal;
import java.time.InstantSource;
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
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.roster.Roster;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Somebody takes a turn, or days of it, in another one's place; and the end of that. */
@Controller
class SwapPage {

    private static final String WORDS = "turns";

    private final RosterDesk desk;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    SwapPage(RosterDesk desk, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    /**
     * @param at a local time within the turn
     * @param day only this day of it; anything else is the whole turn
     */
    @GetMapping(path = "/turns/{id}/swap", produces = "text/html")
    ModelAndView ask(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "") String day,
            Locale locale) {
        Calendar calendar = calendar(id, locale);
        Turn turn = Turn.at(calendar, Times.of(at));
        SwapForm form = turn.form(desk.open(id).seen(), TurnsPage.day(day));
        return page(calendar, at, form, Notes.NONE, HttpStatus.OK);
    }

    @PostMapping("/turns/{id}/swap")
    ModelAndView swap(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String at,
            @RequestParam(defaultValue = "0") String seen,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(defaultValue = "") String contact,
            @RequestParam(defaultValue = "") String agreed,
            Locale locale,
            Principal login) {
        var form = new SwapForm(RosterDesk.version(seen), from, to, contact);
        Piece wish = form.added(desk.open(id).piece());
        return done(id, at, form, wish, locale, desk.save(form.seen(), wish, login.getName(), agreed));
    }

    @PostMapping("/turns/{id}/swap/off")
    ModelAndView off(
            @PathVariable String id,
            @RequestParam(defaultValue = "0") String seen,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(defaultValue = "") String contact,
            @RequestParam(defaultValue = "") String agreed,
            Locale locale,
            Principal login) {
        var form = new SwapForm(RosterDesk.version(seen), from, to, contact);
        Piece wish = form.taken(desk.open(id).piece());
        Saved saved = desk.save(form.seen(), wish, login.getName(), agreed);
        ModelAndView page = done(id, from, form, wish, locale, saved);
        return saved instanceof Saved.Opens ? page.addObject("agreedAt", "/turns/" + id + "/swap/off") : page;
    }

    private ModelAndView done(String id, String at, SwapForm form, Piece wish, Locale locale, Saved saved) {
        if (saved instanceof Saved.Stored) {
            return new ModelAndView(back());
        }
        Calendar calendar = calendar(id, locale);
        if (saved instanceof Saved.Overtaken overtaken) {
            Notes notes = Notes.of(overtaken, calendar.names(), calendar.clock(), calendar.tongue(), WORDS);
            var again = new SwapForm(overtaken.version(), form.from(), form.to(), form.contact());
            return page(calendar, at, again, notes, HttpStatus.CONFLICT);
        }
        if (saved instanceof Saved.Opens opens) {
            return page(calendar, at, form, Notes.of(opens, calendar.tongue()), HttpStatus.CONFLICT);
        }
        Notes notes = Notes.of((Saved.Wrong) saved, wish, calendar.tongue(), WORDS);
        int place = Filled.of(wish).each("reliefs").size() - 1;
        return page(calendar, at, form, notes, HttpStatus.UNPROCESSABLE_CONTENT)
                .addObject("place", "reliefs/" + place + "/");
    }

    /** The same page again, with why others cannot be asked. */
    ModelAndView refused(String id, SwapForm asked, Notes notes, Locale locale) {
        var form = new SwapForm(desk.seen(), asked.from(), asked.to(), "");
        return page(calendar(id, locale), asked.from(), form, notes, HttpStatus.CONFLICT);
    }

    static RedirectView back() {
        var view = new RedirectView("/turns", true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }

    private Calendar calendar(String id, Locale locale) {
        Roster roster = Optional.ofNullable(inForce.setup().rosters().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such roster"));
        return new Calendar(roster, new Names(inForce.setup()), new Tongue(words, locale), clock.instant());
    }

    private ModelAndView page(Calendar calendar, String at, SwapForm form, Notes notes, HttpStatus status) {
        var page = new ModelAndView("swap");
        page.setStatus(status);
        return page.addObject("id", calendar.roster().id())
                .addObject("at", at)
                .addObject("turn", Turn.at(calendar, Times.of(at)))
                .addObject("form", form)
                .addObject("notes", notes)
                .addObject("place", "reliefs/0/")
                .addObject("people", inForce.setup().contacts().values());
    }
}
