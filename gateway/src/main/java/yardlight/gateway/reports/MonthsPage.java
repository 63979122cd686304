package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.util.UriComponentsBuilder;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** The pages that show how the alarms of months were, and what they cost people. */
@Controller
class MonthsPage {

    /** A line of the page of people. */
    record Row(String month, MonthOfTexts texts) {}

    private final PerformanceReports performance;
    private final BurdenReports burden;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final MessageSource words;

    MonthsPage(
            PerformanceReports performance,
            BurdenReports burden,
            SetupInForce inForce,
            InstantSource clock,
            MessageSource words) {
        this.performance = performance;
        this.burden = burden;
        this.inForce = inForce;
        this.clock = clock;
        this.words = words;
    }

    @GetMapping(path = "/reports/performance", produces = "text/html")
    String performance(HttpServletRequest request, Model model, Locale locale) {
        Setup setup = inForce.setup();
        Instant now = clock.instant();
        MonthForm form = MonthForm.of(request, setup, now, new Tongue(words, locale));
        model.addAttribute("form", form);
        model.addAttribute("sites", setup.sites().values());
        List<MonthSheet> months = List.of();
        if (form.good()) {
            var sheets = new MonthSheets(
                    setup,
                    new Tongue(words, locale),
                    new Clockface(form.months().zone(), now, locale));
            months = performance.of(form.months()).stream().map(sheets::of).toList();
        }
        model.addAttribute("months", months);
        model.addAttribute("file", file(form));
        return "performance";
    }

    @GetMapping(path = "/reports/burden", produces = "text/html")
    String burden(HttpServletRequest request, Model model, Locale locale) {
        MonthForm form = MonthForm.of(request, inForce.setup(), clock.instant(), new Tongue(words, locale));
        model.addAttribute("form", form);
        model.addAttribute(
                "rows",
                form.good()
                        ? burden.of(form.months()).stream()
                                .map(one -> new Row(MonthSheets.month(one.month(), locale), one))
                                .toList()
                        : List.of());
        model.addAttribute("file", file(form));
        return "burden";
    }

    /** The end of the address of the same as a file; empty while something is wrong. */
    private static String file(MonthForm form) {
        return form.good()
                ? UriComponentsBuilder.newInstance()
                        .queryParamIfPresent("site", form.months().site())
                        .queryParam("from", form.from())
                        .queryParam("to", form.to())
                        .encode()
                        .build()
                        .toUriString()
                : "";
    }
}
