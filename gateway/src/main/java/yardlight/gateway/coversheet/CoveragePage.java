package yardlight.gateway.coversheet;

import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import yardlight.escalation.setup.Site;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Who would hear an alarm of a site in the time to come, and when nobody would. */
@Controller
class CoveragePage {

    private final CoverageSheets sheets;
    private final SetupInForce inForce;

    CoveragePage(CoverageSheets sheets, SetupInForce inForce) {
        this.sheets = sheets;
        this.inForce = inForce;
    }

    @GetMapping(path = "/sites/{id}/coverage", produces = "text/html")
    String show(@PathVariable String id, Model model, Locale locale) {
        Site site = Optional.ofNullable(inForce.setup().sites().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such site"));
        model.addAttribute("sheet", sheets.of(site, locale));
        return "coverage";
    }
}
