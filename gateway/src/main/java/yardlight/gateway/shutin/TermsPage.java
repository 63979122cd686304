package yardlight.gateway.shutin;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.edit.Part;
import yardlight.gateway.fields.Faces;
import yardlight.gateway.fields.Form;
import yardlight.gateway.fields.Forms;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Says how a site is asked to shut in, with the cautions above it. Turns nothing on, and what it changes turns it off. */
@Controller
@RequestMapping("/sites/{id}/shut-in/terms")
class TermsPage {

    private final Forms forms;
    private final ShutInSheets sheets;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    TermsPage(Forms forms, ShutInSheets sheets, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.forms = forms;
        this.sheets = sheets;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    ModelAndView show(@PathVariable String id, Locale locale) {
        return page(id, forms.open(wanted(id)), new Tongue(words, locale));
    }

    @PostMapping
    ModelAndView save(@PathVariable String id, HttpServletRequest request, Locale locale, Principal login) {
        var tongue = new Tongue(words, locale);
        var names = new Names(inForce.setup());
        var clockface = new Clockface(names.zone(id), clock.instant(), locale);
        Form form = forms.save(wanted(id), request.getParameterMap(), login.getName(), names, clockface, tongue);
        if (form.stored()) {
            return ShutInPage.back(id);
        }
        ModelAndView page = page(id, form, tongue);
        page.setStatus(form.overtaken() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
    }

    private static Forms.Wanted wanted(String id) {
        return new Forms.Wanted(
                TermsFields.LAYOUT,
                Part.SITES,
                tree -> tree.piece(Part.SITES, id).node().orElseThrow(() -> Problem.notFound("there is no such site")));
    }

    private ModelAndView page(String id, Form form, Tongue tongue) {
        var faces = new Faces(form, tongue, Map.of(), choices(id, tongue));
        return new ModelAndView("shut-in-terms")
                .addObject("sheet", sheets.of(id, tongue))
                .addObject("pages", ShutInPage.PAGES)
                .addObject("form", form)
                .addObject("fold", faces.fold(TermsFields.NAME));
    }

    /** The boxes of the site, and the relays of this gateway. */
    private Map<String, List<Faces.Choice>> choices(String id, Tongue tongue) {
        Setup setup = inForce.setup();
        return Map.of(
                "shutIn/box",
                offered(setup.boxesAt(id).stream().map(box -> box.id()), tongue),
                "shutIn/relay",
                offered(sheets.relays().stream().sorted(), tongue));
    }

    private static List<Faces.Choice> offered(Stream<String> names, Tongue tongue) {
        return Stream.concat(
                        Stream.of(new Faces.Choice("", tongue.say("fields.no-point"))),
                        names.map(name -> new Faces.Choice(name, name)))
                .toList();
    }
}
