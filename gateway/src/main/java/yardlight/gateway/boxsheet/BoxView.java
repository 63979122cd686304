package yardlight.gateway.boxsheet;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import yardlight.db.alarm.AlarmFilter;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.HeardBoxes;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.wire.Address;
import yardlight.gateway.wire.Examples;
import yardlight.gateway.wire.Keys;
import yardlight.gateway.wire.Mistakes;
import yardlight.gateway.wire.Posts;
import yardlight.gateway.wire.Spans;

/** Fills the page of a box. */
@Component
class BoxView {

    /** Among so many of a site's newest alarms those of one box are looked for. */
    private static final int LOOKED_THROUGH = 50;

    private static final List<String> FIELDS = List.of("site", "feed", "link", "every", "grace");

    private final SetupInForce inForce;
    private final HeardBoxes heard;
    private final Alarms alarms;
    private final Keys keys;
    private final Posts posts;
    private final Address address;
    private final MessageSource words;
    private final InstantSource clock;

    BoxView(
            SetupInForce inForce,
            HeardBoxes heard,
            Alarms alarms,
            Keys keys,
            Posts posts,
            Address address,
            MessageSource words,
            InstantSource clock) {
        this.inForce = inForce;
        this.heard = heard;
        this.alarms = alarms;
        this.keys = keys;
        this.posts = posts;
        this.address = address;
        this.words = words;
        this.clock = clock;
    }

    /** The page while it is filled. */
    record Filling(Model model, Setup setup, String address, Box box, Tongue tongue) {

        Filling form(int seen, BoxForm form) {
            model.addAttribute("seen", seen);
            model.addAttribute("form", form);
            model.addAttribute("sites", setup.sites().values());
            model.addAttribute("every", Spans.choices(Spans.EVERY, form.every(), tongue));
            String grace = form.grace().equals(BoxForm.LEARNED) ? "" : form.grace();
            model.addAttribute("grace", Spans.choices(Spans.GRACE, grace, tongue));
            return this;
        }

        Filling refused(Saved saved) {
            if (saved instanceof Saved.Wrong wrong) {
                model.addAttribute("mistakes", Mistakes.of(wrong.mistakes(), FIELDS, tongue));
            }
            if (saved instanceof Saved.Overtaken overtaken) {
                model.addAttribute("overtaken", overtaken);
                model.addAttribute("seen", overtaken.version());
            }
            return this;
        }

        Filling fresh(String key) {
            model.addAttribute("fresh", key);
            examples(key);
            return this;
        }

        void examples(String key) {
            Optional<Terms> terms = setup.site(box.site()).flatMap(Site::shutIn);
            model.addAttribute("examples", Examples.all(new Examples.Wired(address, box.id(), key), terms));
        }

        String name() {
            return "box";
        }
    }

    /** @throws Problem 404 when no such box is set up */
    Filling show(String id, Model model, HttpServletRequest request, Locale locale) {
        Setup setup = inForce.setup();
        Box box = box(id);
        var tongue = new Tongue(words, locale);
        var newest = new AlarmFilter(
                Optional.of(box.site()), Optional.empty(), Optional.empty(), Optional.empty(), LOOKED_THROUGH);
        model.addAttribute(
                "sheet",
                new BoxSheets(setup, clock.instant(), tongue)
                        .sheet(box, heard.byId(id), alarms.find(newest), keys.of(id)));
        model.addAttribute("feeds", named(setup, Box::feed));
        model.addAttribute("links", named(setup, Box::link));
        model.addAttribute("mistakes", Map.of());
        posts(id, model, locale);
        var filling = new Filling(model, setup, address.of(request), box, tongue);
        filling.examples(tongue.say("wire.key.placeholder"));
        return filling;
    }

    /** @throws Problem 404 when no such box is set up */
    Box box(String id) {
        return Optional.ofNullable(inForce.setup().boxes().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such box in the setup"));
    }

    private static TreeSet<String> named(Setup setup, Function<Box, Optional<String>> name) {
        var names = new TreeSet<String>();
        setup.boxes().values().forEach(box -> name.apply(box).ifPresent(names::add));
        return names;
    }

    /** What came in from a box, with the time at its site. */
    void posts(String id, Model model, Locale locale) {
        Box box = box(id);
        Instant now = clock.instant();
        model.addAttribute("box", id);
        model.addAttribute("clock", new Clockface(new Names(inForce.setup()).zone(box.site()), now, locale));
        model.addAttribute("posts", posts.look(id));
    }
}
