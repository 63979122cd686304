package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Where somebody chooses what a report is to be about. */
@Controller
class ReportsPage {

    private final SetupInForce inForce;
    private final InstantSource clock;
    private final MessageSource words;

    ReportsPage(SetupInForce inForce, InstantSource clock, MessageSource words) {
        this.inForce = inForce;
        this.clock = clock;
        this.words = words;
    }

    @GetMapping(path = "/reports", produces = "text/html")
    String show(HttpServletRequest request, Model model, Locale locale) {
        Setup setup = inForce.setup();
        model.addAttribute("form", PeriodForm.of(request, setup, clock.instant(), new Tongue(words, locale)));
        model.addAttribute("sites", setup.sites().values());
        return "reports";
    }
}
