package yardlight.gateway.story;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.RequestContextUtils;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.Stimulus;
import yardlight.gateway.alarms.Actions;
import yardlight.gateway.alarms.Notes;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.strip.HourBefore;

/** The page of one alarm and its buttons. What is refused comes back with its reason and with what was typed. */
@Controller
@RequestMapping("/alarms/{id}")
class StoryPage {

    private final StorySheets sheets;
    private final Actions actions;
    private final Notes notes;
    private final HourBefore hourBefore;
    private final MessageSource words;

    StoryPage(StorySheets sheets, Actions actions, Notes notes, HourBefore hourBefore, MessageSource words) {
        this.hourBefore = hourBefore;
        this.sheets = sheets;
        this.actions = actions;
        this.notes = notes;
        this.words = words;
    }

    @GetMapping(produces = "text/html")
    ModelAndView show(@PathVariable String id, HttpServletRequest request) {
        return page(id, Typed.NOTHING, request);
    }

    /** The button stands on the first page too, and leads back to where it was pressed. */
    @PostMapping("/acknowledge")
    ModelAndView acknowledge(@PathVariable String id, HttpServletRequest request) {
        String by = request.getRemoteUser();
        String after = typed(request, "from").equals("alarm") ? "/alarms/" + id : "/";
        return does(id, Typed.NOTHING, request, () -> {
            actions.act(id, key -> new Stimulus.Acknowledge(key, by, "page", Optional.empty()));
            return after;
        });
    }

    @PostMapping("/shelve")
    ModelAndView shelve(@PathVariable String id, HttpServletRequest request) {
        String length = typed(request, "for");
        String reason = typed(request, "reason");
        Tongue tongue = tongue(request);
        String wrong = Shelf.read(length).isPresent() ? "" : tongue.say("story.wrong.length");
        Typed typed = new Typed(length, reason, "", "", wrong, Sentences.wrong(reason, tongue), "");
        String by = request.getRemoteUser();
        return does(id, typed, request, () -> {
            actions.act(
                    id, key -> new Stimulus.Shelve(key, Shelf.read(length).orElseThrow(), Sentences.of(reason), by));
            return "/alarms/" + id;
        });
    }

    @PostMapping("/unshelve")
    ModelAndView unshelve(@PathVariable String id, HttpServletRequest request) {
        String by = request.getRemoteUser();
        return does(id, Typed.NOTHING, request, () -> {
            actions.act(id, key -> new Stimulus.Unshelve(key, by));
            return "/alarms/" + id;
        });
    }

    @PostMapping("/reset")
    ModelAndView reset(@PathVariable String id, HttpServletRequest request) {
        String by = request.getRemoteUser();
        return does(id, Typed.NOTHING, request, () -> {
            actions.act(id, key -> new Stimulus.Reset(key, by));
            return "/alarms/" + id;
        });
    }

    @PostMapping("/notes")
    ModelAndView note(@PathVariable String id, HttpServletRequest request) {
        String note = typed(request, "note");
        String wrong = Sentences.wrong(note, tongue(request));
        String by = request.getRemoteUser();
        return does(id, new Typed(Typed.NOTHING.length(), "", note, "", "", "", wrong), request, () -> {
            notes.keep(id, Sentences.of(note), by);
            return "/alarms/" + id;
        });
    }

    /** Something that is done to an alarm, and the address that comes after. */
    private interface Deed {
        String done();
    }

    private ModelAndView does(String id, Typed typed, HttpServletRequest request, Deed deed) {
        if (!typed.good()) {
            return again(id, typed, request, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        try {
            var back = new RedirectView(deed.done(), true);
            back.setStatusCode(HttpStatus.SEE_OTHER);
            return new ModelAndView(back);
        } catch (Problem problem) {
            if (problem.status() != HttpStatus.CONFLICT) {
                throw problem;
            }
            return again(id, typed.refused(tongue(request).say(problem.sentence())), request, HttpStatus.CONFLICT);
        }
    }

    private ModelAndView again(String id, Typed typed, HttpServletRequest request, HttpStatus status) {
        ModelAndView page = page(id, typed, request);
        page.setStatus(status);
        return page;
    }

    private ModelAndView page(String id, Typed typed, HttpServletRequest request) {
        var page = new ModelAndView("alarm");
        page.addObject("sheet", sheets.of(id, tongue(request)));
        page.addObject("hour", hourBefore.of(id, tongue(request)));
        page.addObject("typed", typed);
        return page;
    }

    private Tongue tongue(HttpServletRequest request) {
        return new Tongue(words, RequestContextUtils.getLocale(request));
    }

    private static String typed(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getParameter(name)).orElse("");
    }
}
