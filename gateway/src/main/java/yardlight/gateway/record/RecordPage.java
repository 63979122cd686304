package yardlight.gateway.record;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.db.log.LogPage;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** The log to be read: from the newest line back, what somebody asks for, and each line at an address of its own. */
@Controller
class RecordPage {

    private static final int PAGE = 50;

    /** A kind of lines with its name. */
    record Kind(String word, String name) {}

    private final LogLines log;
    private final LogCsv csv;
    private final SetupInForce inForce;
    private final MessageSource words;

    RecordPage(LogLines log, LogCsv csv, SetupInForce inForce, MessageSource words) {
        this.log = log;
        this.csv = csv;
        this.inForce = inForce;
        this.words = words;
    }

    @GetMapping(path = "/record", produces = "text/html")
    String show(HttpServletRequest request, Model model, Locale locale) {
        Setup setup = inForce.setup();
        Asked asked = Asked.of(request);
        ZoneId zone = asked.zone(setup);
        var lines = new Lines(setup, new Tongue(words, locale), zone);
        boolean wrong = asked.wrongFrom() || asked.wrongTo();
        LogPage page = wrong
                ? new LogPage(List.of(), Optional.empty(), Optional.empty())
                : log.newest(asked.before(), asked.filter(zone), PAGE);
        model.addAttribute("asked", asked);
        model.addAttribute("zone", zone.getId());
        model.addAttribute("lines", lines.of(page.lines()));
        model.addAttribute("searchedTo", page.searchedTo().map(lines::time).orElse(""));
        model.addAttribute(
                "older", page.next().map(line -> asked.query(Optional.of(line))).orElse(""));
        model.addAttribute("turned", asked.before().isPresent());
        model.addAttribute("file", asked.query(Optional.empty()));
        model.addAttribute("sites", setup.sites().values());
        model.addAttribute("contacts", setup.contacts().values());
        model.addAttribute("kinds", kinds(new Tongue(words, locale)));
        return "record";
    }

    private static List<Kind> kinds(Tongue tongue) {
        return Stream.of(Entry.What.values())
                .map(Entry.What::word)
                .map(word -> new Kind(word, tongue.say("kind." + word)))
                .toList();
    }

    @GetMapping(path = "/record.csv", produces = LogCsv.TYPE)
    void file(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Asked asked = Asked.of(request);
        LogFilter filter = asked.filter(asked.zone(inForce.setup()));
        csv.write(filter, response);
    }

    @GetMapping(path = "/record/{line}", produces = "text/html")
    String one(@PathVariable String line, Model model, Locale locale) {
        LogLine found = Optional.of(line)
                .filter(number -> number.matches("\\d{1,18}"))
                .map(Long::parseLong)
                .flatMap(log::one)
                .orElseThrow(() -> Problem.notFound("there is no such line (any more)"));
        Setup setup = inForce.setup();
        ZoneId zone = new Asked("", "", "", "", "", Optional.empty()).zone(setup);
        model.addAttribute("line", new Lines(setup, new Tongue(words, locale), zone).of(found));
        model.addAttribute("utc", found.at().toString());
        model.addAttribute(
                "before", log.one(found.line() - 1).map(LogLine::line).orElse(0L));
        model.addAttribute("after", log.one(found.line() + 1).map(LogLine::line).orElse(0L));
        return "line";
    }
}
