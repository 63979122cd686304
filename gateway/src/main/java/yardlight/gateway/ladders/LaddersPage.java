package yardlight.gateway.ladders;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Tongue;

/** All ladders, and the way to a new one. */
@Controller
@RequestMapping("/ladders")
class LaddersPage {

    private final LadderSheets sheets;

    LaddersPage(LadderSheets sheets) {
        this.sheets = sheets;
    }

    /**
     * One of them.
     *
     * @param rungs in words, from the first to be called on
     */
    record Row(String id, List<String> rungs, List<String> usedBy) {}

    @GetMapping(produces = "text/html")
    String show(Model model, Locale locale) {
        Setup setup = sheets.setup();
        Tongue tongue = sheets.tongue(locale);
        Map<String, List<String>> users = setup.sites().values().stream()
                .collect(Collectors.groupingBy(Site::ladder, Collectors.mapping(Site::name, Collectors.toList())));
        model.addAttribute(
                "rows",
                setup.ladders().values().stream()
                        .map(ladder -> new Row(
                                ladder.id(), rungs(ladder, setup, tongue), users.getOrDefault(ladder.id(), List.of())))
                        .toList());
        return "ladders";
    }

    private static List<String> rungs(Ladder ladder, Setup setup, Tongue tongue) {
        var telling = new Telling(tongue, setup, true);
        return ladder.rungs().stream()
                .map(rung -> tongue.say(
                        rung.rounds() == 1 ? "ladders.rung.once" : "ladders.rung.rounds",
                        people(rung, telling),
                        Telling.length(rung.delay()),
                        rung.rounds()))
                .toList();
    }

    private static String people(Rung rung, Telling telling) {
        return rung.call().stream().map(telling::person).collect(Collectors.joining(", "));
    }

    @PostMapping
    Object add(@RequestParam(defaultValue = "") String id, Model model, Locale locale) {
        String wanted = id.strip();
        boolean there = sheets.setup().ladders().containsKey(wanted);
        if (there || !AlarmKey.ID.matcher(wanted).matches()) {
            model.addAttribute("typed", wanted);
            model.addAttribute("wrong", sheets.tongue(locale).say(there ? "ladders.wrong.there" : "ladders.wrong.id"));
            return show(model, locale);
        }
        var fresh = new RedirectView("/ladders/" + wanted + "?new", true);
        fresh.setStatusCode(HttpStatus.SEE_OTHER);
        return fresh;
    }
}
