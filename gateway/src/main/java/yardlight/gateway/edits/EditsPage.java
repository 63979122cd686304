package yardlight.gateway.edits;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.edit.History;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Sent;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Every edit of the setup with who and when, and the button that takes it back. */
@Controller
@RequestMapping("/edits")
class EditsPage {

    private static final int MOST = 15;

    private final History history;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    EditsPage(History history, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.history = history;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    String show(
            @RequestParam(defaultValue = "") String before, Model model, Locale locale, HttpServletRequest request) {
        Telling telling = telling(locale, request);
        List<EditRow> rows = history.newest(number(before).orElse(Integer.MAX_VALUE), MOST).stream()
                .map(edit -> EditRow.of(edit, telling, clockface(locale)))
                .toList();
        model.addAttribute("rows", rows);
        model.addAttribute("older", rows.size() < MOST ? 0 : rows.get(MOST - 1).version());
        return "edits";
    }

    @PostMapping("/{version}/take-back")
    Object takeBack(
            @PathVariable String version, Model model, Locale locale, HttpServletRequest request, Principal login) {
        String agreed = Sent.text(request.getParameterMap(), "agreed");
        Saved saved = history.takeBack(number(version).orElse(0), login.getName(), agreed);
        if (saved instanceof Saved.Stored) {
            var back = new RedirectView("/edits?done", true);
            back.setStatusCode(HttpStatus.SEE_OTHER);
            return back;
        }
        if (saved instanceof Saved.Wrong wrong) {
            var tongue = new Tongue(words, locale);
            model.addAttribute(
                    "wrong",
                    wrong.mistakes().stream()
                            .map(mistake -> tongue.say(mistake.rule()))
                            .toList());
        }
        if (saved instanceof Saved.Opens opens) {
            model.addAttribute("notes", Notes.of(opens, new Tongue(words, locale)));
            model.addAttribute("version", version);
        }
        if (saved instanceof Saved.Overtaken overtaken) {
            model.addAttribute("overtaken", overtaken);
            model.addAttribute("overtakenAt", clockface(locale).read(overtaken.at()));
            model.addAttribute("since", EditRow.Thing.of(overtaken.changes(), telling(locale, request)));
        }
        return show("", model, locale, request);
    }

    private static Optional<Integer> number(String text) {
        return Optional.of(text).filter(digits -> digits.matches("\\d{1,9}")).map(Integer::valueOf);
    }

    private Telling telling(Locale locale, HttpServletRequest request) {
        boolean addresses = request.isUserInRole("HAND") || request.isUserInRole("OWNER");
        return new Telling(new Tongue(words, locale), inForce.setup(), addresses);
    }

    /** An edit belongs to no site; it is told by the clock of the first one. */
    private Clockface clockface(Locale locale) {
        Setup setup = inForce.setup();
        Optional<Site> first = setup.sites().values().stream().findFirst();
        ZoneId zone = first.map(Site::zone).orElse(ZoneOffset.UTC);
        return new Clockface(zone, clock.instant(), locale);
    }
}
