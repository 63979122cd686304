package yardlight.gateway.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.edit.Part;
import yardlight.gateway.fields.Faces;
import yardlight.gateway.fields.Field;
import yardlight.gateway.fields.Form;
import yardlight.gateway.fields.Forms;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Sets up one point: how it reads in texts, what its readings are held against, and what they are of. */
@Controller
@RequestMapping("/sites/{site}/points/{point}")
class PointPage {

    private final Forms forms;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    PointPage(Forms forms, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.forms = forms;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    ModelAndView show(@PathVariable String site, @PathVariable String point, Locale locale) {
        return page(known(site), point, forms.open(wanted(site, point)), new Tongue(words, locale));
    }

    @PostMapping
    ModelAndView save(
            @PathVariable String site, @PathVariable String point, HttpServletRequest request, Locale locale) {
        var tongue = new Tongue(words, locale);
        Site known = known(site);
        Form form = forms.save(
                wanted(site, point),
                request.getParameterMap(),
                request.getRemoteUser(),
                new Names(inForce.setup()),
                new Clockface(known.zone(), clock.instant(), locale),
                tongue);
        if (form.stored()) {
            return new ModelAndView(SitesPage.back(site));
        }
        ModelAndView page = page(known, point, form, tongue);
        page.setStatus(form.overtaken() ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
    }

    private static Forms.Wanted wanted(String site, String point) {
        return new Forms.Wanted(PointFields.LAYOUT, Part.POINTS, tree -> Trees.point(tree, site, point));
    }

    private Site known(String site) {
        return inForce.setup().site(site).orElseThrow(() -> Problem.notFound("there is no such site"));
    }

    private ModelAndView page(Site site, String point, Form form, Tongue tongue) {
        String unit = form.values().at("unit").strip();
        String own = unit.isEmpty() ? tongue.say("fields.in.own") : unit;
        boolean byPressure = !form.values().at("tank-gravity").isBlank();
        var faces = new Faces(
                form,
                tongue,
                Map.of(Field.OF_POINT, own, Field.OF_TANK, byPressure ? "ft" : own),
                choices(inForce.setup(), site.id(), point, tongue));
        return new ModelAndView("point")
                .addObject("site", site)
                .addObject("point", point)
                .addObject("form", form)
                .addObject("folds", faces.folds())
                .addObject(
                        "replay",
                        inForce.setup().known(site.id(), point).isPresent()
                                ? "/sites/" + site.id() + "/points/" + point + "/replay"
                                : "");
    }

    private static Map<String, List<Faces.Choice>> choices(Setup setup, String site, String point, Tongue tongue) {
        List<Faces.Choice> priorities = Stream.concat(
                        Stream.of(new Faces.Choice("", tongue.say("sites.priority.none"))),
                        Stream.of(Priority.values())
                                .map(one -> new Faces.Choice(one.word(), tongue.say("priority." + one.word()))))
                .toList();
        Predicate<Point> other = one -> one.site().equals(site) && !one.id().equals(point);
        return Map.of(
                "priority",
                priorities,
                "pump/empties",
                points(setup, other.and(one -> one.equipment().tank().isPresent()), tongue),
                "pump/pressure",
                points(setup, other, tongue));
    }

    private static List<Faces.Choice> points(Setup setup, Predicate<Point> which, Tongue tongue) {
        var offered = new ArrayList<>(List.of(new Faces.Choice("", tongue.say("fields.no-point"))));
        setup.points().stream()
                .filter(which)
                .map(point -> new Faces.Choice(point.id(), point.name()))
                .forEach(offered::add);
        return offered;
    }
}
