package yardlight.gateway.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.RequestContextUtils;
import yardlight.escalation.setup.Site;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Sets up one point: a name, a unit, a priority, delays. */
@Controller
@RequestMapping("/sites/{site}/points/{point}")
class PointPage {

    private final Desk desk;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    PointPage(Desk desk, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.desk = desk;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    /** What became of a save, for whoever reads the form again. */
    private record Outcome(Map<String, String> wrong, List<Saved.Changed> changes, String who) {

        static final Outcome NONE = new Outcome(Map.of(), List.of(), "");
    }

    @GetMapping(produces = "text/html")
    ModelAndView show(@PathVariable String site, @PathVariable String point, HttpServletRequest request) {
        Desk.Look look = desk.look();
        PointForm form = PointForm.of(Trees.point(look.tree(), site, point), look.version());
        return page(known(site), point, form, Outcome.NONE);
    }

    @PostMapping
    ModelAndView save(@PathVariable String site, @PathVariable String point, HttpServletRequest request) {
        Tongue tongue = new Tongue(words, RequestContextUtils.getLocale(request));
        Site known = known(site);
        PointForm form = PointForm.typed(request);
        Map<String, String> mistakes = form.mistakes(tongue);
        if (!mistakes.isEmpty()) {
            return wrong(known, point, form, mistakes);
        }
        Piece wish = Piece.of(Part.POINTS, form.on(Trees.point(desk.look().tree(), site, point)));
        Saved saved = desk.save(form.seen(), List.of(wish), request.getRemoteUser());
        if (saved instanceof Saved.Wrong mistaken) {
            var byField = new TreeMap<String, String>();
            mistaken.mistakes().forEach(one -> byField.putIfAbsent(one.field(), tongue.say(one.rule())));
            return wrong(known, point, form, byField);
        }
        if (saved instanceof Saved.Overtaken other) {
            var clockface = new Clockface(known.zone(), clock.instant(), tongue.locale());
            String who = tongue.say("sites.overtaken", other.by(), clockface.read(other.at()));
            ModelAndView page =
                    page(known, point, form.seen(other.version()), new Outcome(Map.of(), other.changes(), who));
            page.setStatus(HttpStatus.CONFLICT);
            return page;
        }
        return new ModelAndView(SitesPage.back(site));
    }

    private ModelAndView wrong(Site site, String point, PointForm form, Map<String, String> mistakes) {
        ModelAndView page = page(site, point, form, new Outcome(mistakes, List.of(), ""));
        page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
    }

    private Site known(String site) {
        return inForce.setup().site(site).orElseThrow(() -> Problem.notFound("there is no such site"));
    }

    private static ModelAndView page(Site site, String point, PointForm form, Outcome outcome) {
        var page = new ModelAndView("point");
        page.addObject("site", site);
        page.addObject("point", point);
        page.addObject("form", form);
        page.addObject("wrong", outcome.wrong());
        page.addObject("changes", outcome.changes());
        page.addObject("who", outcome.who());
        return page;
    }
}
