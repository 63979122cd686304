package yardlight.gateway.shutin;

import java.security.Principal;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.Answer;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.shutin.Asker;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Tongue;

/** Asks a site to shut in, by its typed name and a second word; and turns that on, caution by caution, and off. */
@Controller
@RequestMapping("/sites/{id}/shut-in")
class ShutInPage {

    private static final String VIEW = "shut-in";
    private static final String CAUTIONS = "shut-in-on";

    /** The pages with the cautions; the one after them turns it on. */
    static final int PAGES = 5;

    private final ShutInSheets sheets;
    private final Lane lane;
    private final MessageSource words;

    ShutInPage(ShutInSheets sheets, Lane lane, MessageSource words) {
        this.sheets = sheets;
        this.lane = lane;
        this.words = words;
    }

    @GetMapping(produces = "text/html")
    ModelAndView look(@PathVariable String id, Locale locale) {
        return page(VIEW, id, locale, "", HttpStatus.OK);
    }

    /** @param sure {@code yes} once the button was held, or pressed a second time */
    @PostMapping
    ModelAndView ask(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String sure,
            Locale locale,
            Principal login) {
        ShutInSheet sheet = sheets.of(id, tongue(locale));
        if (!named(sheet, name)) {
            return page(
                    VIEW,
                    id,
                    locale,
                    tongue(locale).say("shutin.wrong-name", sheet.name()),
                    HttpStatus.UNPROCESSABLE_CONTENT);
        }
        if (!sure.equals("yes")) {
            return page(VIEW, id, locale, "", HttpStatus.OK).addObject("typed", name);
        }
        var asker = new Asker(Asker.Kind.PAGE, login.getName());
        return done(VIEW, id, locale, new ShutInSaid.Asked(asker));
    }

    /** @param step which caution is read next, from 1 on */
    @GetMapping(path = "/on", produces = "text/html")
    ModelAndView read(@PathVariable String id, @RequestParam(defaultValue = "1") String step, Locale locale) {
        int at = step.matches("[1-9]") ? Math.min(Integer.parseInt(step), PAGES + 1) : 1;
        return page(CAUTIONS, id, locale, "", HttpStatus.OK).addObject("step", at);
    }

    /** @param terms as they stood on the page that was read */
    @PostMapping("/on")
    ModelAndView turnOn(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String terms,
            Locale locale,
            Principal login) {
        ShutInSheet sheet = sheets.of(id, tongue(locale));
        String wrong = named(sheet, name) ? sheet.lacking() : tongue(locale).say("shutin.wrong-name", sheet.name());
        if (!wrong.isEmpty()) {
            return page(CAUTIONS, id, locale, wrong, HttpStatus.UNPROCESSABLE_CONTENT)
                    .addObject("step", PAGES + 1);
        }
        return done(CAUTIONS, id, locale, new ShutInSaid.TurnedOn(terms, login.getName()));
    }

    @PostMapping("/off")
    ModelAndView turnOff(@PathVariable String id, Locale locale, Principal login) {
        return done(VIEW, id, locale, new ShutInSaid.TurnedOff(login.getName()));
    }

    private ModelAndView done(String view, String id, Locale locale, ShutInSaid said) {
        Answer answer = lane.decide(new Stimulus.ShutIn(id, said));
        if (answer instanceof Answer.Refusal refusal) {
            return page(view, id, locale, refusal.reason(), HttpStatus.CONFLICT).addObject("step", PAGES + 1);
        }
        return back(id);
    }

    static ModelAndView back(String id) {
        var back = new RedirectView("/sites/" + id + "/shut-in", true);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return new ModelAndView(back);
    }

    private ModelAndView page(String view, String id, Locale locale, String wrong, HttpStatus status) {
        var page = new ModelAndView(view);
        page.setStatus(status);
        return page.addObject("sheet", sheets.of(id, tongue(locale)))
                .addObject("pages", PAGES)
                .addObject("typed", "")
                .addObject("wrong", wrong);
    }

    private static boolean named(ShutInSheet sheet, String typed) {
        return typed.strip().equalsIgnoreCase(sheet.name().strip());
    }

    private Tongue tongue(Locale locale) {
        return new Tongue(words, locale);
    }
}
