package yardlight.gateway.start;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.wire.Keys;
import yardlight.gateway.wire.Mistakes;

/** From an empty gateway to the first text, in five steps that can be left and come back to. */
@Controller
@RequestMapping("/start")
class StartPage {

    private static final String MISTAKES = "mistakes";
    private static final Map<Step, List<String>> FIELDS = Map.of(
            Step.YOU, List.of("name", "zone", "language", "channel", "address"),
            Step.SITE, List.of("name", "zone"),
            Step.BOX, List.of("name", "every"),
            Step.LADDER, List.of("wait", "again"),
            Step.TEST, List.of());

    private final StartView view;
    private final Desk desk;
    private final OwnContact own;
    private final Keys keys;
    private final Lane lane;

    StartPage(StartView view, Desk desk, OwnContact own, Keys keys, Lane lane) {
        this.view = view;
        this.desk = desk;
        this.own = own;
        this.keys = keys;
        this.lane = lane;
    }

    @GetMapping(produces = "text/html")
    String show(
            @RequestParam(required = false, defaultValue = "") String step,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        Progress progress = view.progress();
        Step wanted = Step.of(step).filter(progress::open).orElseGet(progress::next);
        return page(wanted, progress, Map.of(), request, model, locale);
    }

    private String page(
            Step step,
            Progress progress,
            Map<String, String> typed,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        view.show(step, progress, typed, model, locale);
        if (step == Step.BOX && !model.containsAttribute("examples")) {
            progress.box().map(Piece::key).ifPresent(box -> view.wire(box, Optional.empty(), request, model, locale));
        }
        model.addAttribute(
                "newest", progress.box().map(box -> newest(box.key())).orElse(""));
        return "start";
    }

    /** What became of the test text, by now. */
    @GetMapping(path = "/test", produces = "text/html")
    String test(Model model, Locale locale) {
        view.test(model, locale);
        return "start :: test";
    }

    @PostMapping(path = "/{step}", produces = "text/html")
    Object store(
            @PathVariable("step") String word,
            @RequestParam Map<String, String> typed,
            HttpServletRequest request,
            Model model,
            Locale locale) {
        Step step = Step.of(word).orElseThrow(() -> Problem.notFound("there is no such step"));
        Progress before = view.progress();
        if (!before.open(step)) {
            return to("/start");
        }
        Map<String, String> mistakes = keep(step, typed, request.getRemoteUser(), view.tongue(locale));
        if (mistakes.isEmpty()) {
            boolean made = step == Step.BOX && before.box().isEmpty();
            return made
                    ? withKey(request, model, locale)
                    : to("/start?step=" + step.next().orElse(Step.TEST).word());
        }
        model.addAttribute(MISTAKES, mistakes);
        return page(step, view.progress(), typed, request, model, locale);
    }

    /** @return what is wrong; nothing when it is stored */
    private Map<String, String> keep(Step step, Map<String, String> typed, String by, Tongue tongue) {
        List<String> fields = FIELDS.get(step);
        if (fields.contains("name") && typed.getOrDefault("name", "").isBlank()) {
            return Map.of("name", tongue.say("wire.wrong.name"));
        }
        Desk.Look look = desk.look();
        List<Piece> wishes = new Wishes(look, typed).of(step);
        if (wishes.isEmpty()) {
            return Map.of();
        }
        Saved saved = desk.save(seen(typed, look), wishes, by);
        if (saved instanceof Saved.Wrong wrong) {
            return Mistakes.of(wrong.mistakes(), fields, tongue);
        }
        if (saved instanceof Saved.Stored && step == Step.YOU) {
            own.of(by, wishes);
        }
        return saved instanceof Saved.Overtaken overtaken
                ? Map.of(Mistakes.FORM, tongue.say("start.overtaken", overtaken.by()))
                : Map.of();
    }

    /** Another key, for who did not keep the first one. The same form sent twice makes one. */
    @PostMapping(path = "/key", produces = "text/html")
    Object key(@RequestParam Map<String, String> typed, HttpServletRequest request, Model model, Locale locale) {
        boolean shown = view.progress()
                .box()
                .filter(box -> newest(box.key()).equals(typed.getOrDefault("after", "")))
                .isPresent();
        return shown ? withKey(request, model, locale) : to("/start?step=box");
    }

    private String newest(String box) {
        List<Keys.Known> known = keys.of(box);
        return known.isEmpty() ? "" : known.get(known.size() - 1).id();
    }

    /** In this answer and nowhere else: it is in no session and in no address. */
    private String withKey(HttpServletRequest request, Model model, Locale locale) {
        String box = view.progress()
                .box()
                .map(Piece::key)
                .orElseThrow(() -> Problem.conflict("the box was taken away meanwhile"));
        Keys.Fresh fresh = keys.make(box, Optional.empty(), request.getUserPrincipal());
        view.wire(box, Optional.of(fresh.key()), request, model, locale);
        return page(Step.BOX, view.progress(), Map.of(), request, model, locale);
    }

    @PostMapping(path = "/test", produces = "text/html")
    Object send(HttpServletRequest request, Model model, Locale locale) {
        Optional<Contact> contact = view.contact();
        if (contact.isEmpty()) {
            return to("/start");
        }
        var test = new Stimulus.TestLine(contact.get().id(), 0, request.getRemoteUser());
        if (lane.decide(test) instanceof Answer.Refusal refusal) {
            model.addAttribute(
                    MISTAKES, Map.of(Mistakes.FORM, view.tongue(locale).say(refusal.why())));
            return page(Step.TEST, view.progress(), Map.of(), request, model, locale);
        }
        return to("/start?step=test");
    }

    private static int seen(Map<String, String> typed, Desk.Look look) {
        String seen = typed.getOrDefault("seen", "");
        return seen.matches("\\d{1,9}") ? Integer.parseInt(seen) : look.version();
    }

    private static RedirectView to(String path) {
        var there = new RedirectView(path, true);
        there.setStatusCode(HttpStatus.SEE_OTHER);
        return there;
    }
}
