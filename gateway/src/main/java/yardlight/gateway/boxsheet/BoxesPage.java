package yardlight.gateway.boxsheet;

import java.security.Principal;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.db.alarm.HeardBoxes;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.wire.Mistakes;

/** All boxes, site by site, and the form for a new one. */
@Controller
@RequestMapping("/boxes")
class BoxesPage {

    private static final String NAME = "name";
    private static final String SITE = "site";

    private final SetupInForce inForce;
    private final HeardBoxes heard;
    private final Desk desk;
    private final MessageSource words;
    private final InstantSource clock;

    BoxesPage(SetupInForce inForce, HeardBoxes heard, Desk desk, MessageSource words, InstantSource clock) {
        this.inForce = inForce;
        this.heard = heard;
        this.desk = desk;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    String show(Model model, Locale locale) {
        return show(model, locale, Map.of(), Map.of());
    }

    private String show(Model model, Locale locale, Map<String, String> typed, Map<String, String> mistakes) {
        Setup setup = inForce.setup();
        var sheets = new BoxSheets(setup, clock.instant(), new Tongue(words, locale));
        model.addAttribute("places", sheets.places(heard.all()));
        model.addAttribute("sites", setup.sites().values());
        model.addAttribute(NAME, typed.getOrDefault(NAME, ""));
        model.addAttribute(SITE, typed.getOrDefault(SITE, ""));
        model.addAttribute("mistakes", mistakes);
        return "boxes";
    }

    @PostMapping(produces = "text/html")
    Object add(@RequestParam Map<String, String> typed, Model model, Locale locale, Principal login) {
        var tongue = new Tongue(words, locale);
        String name = typed.getOrDefault(NAME, "").strip();
        if (name.isEmpty()) {
            return show(model, locale, typed, Map.of(NAME, tongue.say("wire.wrong.name")));
        }
        Desk.Look look = desk.look();
        String free = look.tree().free(Part.BOXES, name);
        String id = free.isEmpty() ? look.tree().free(Part.BOXES, "box") : free;
        var usual =
                new BoxForm(typed.getOrDefault(SITE, ""), "", "", false, BoxForm.USUAL.every(), BoxForm.USUAL.grace());
        Saved saved = desk.save(look.version(), List.of(usual.over(Piece.none(Part.BOXES, id))), login.getName());
        if (saved instanceof Saved.Wrong wrong) {
            return show(model, locale, typed, Mistakes.of(wrong.mistakes(), List.of(SITE), tongue));
        }
        if (saved instanceof Saved.Overtaken) {
            return show(model, locale, typed, Map.of(NAME, tongue.say("boxsheet.overtaken")));
        }
        return to("/boxes/" + id);
    }

    /** So that a page that is loaded again sends nothing again. */
    static View to(String path) {
        var there = new RedirectView(path, true);
        there.setStatusCode(HttpStatus.SEE_OTHER);
        return there;
    }
}
