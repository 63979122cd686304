package yardlight.gateway.curves;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.springframework.context.MessageSource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.strip.Stretch;

/** The curves of a site, and the figures that the page's script asks for when somebody looks closer. */
@Controller
@RequestMapping("/sites/{id}/curves")
class CurvesPage {

    /** Beside what is in sight a little on both sides is asked for. */
    private static final long MOST_SECONDS = 2 * Asked.LONGEST.toSeconds();

    /** The end of the year 9999, as the pages write it. */
    private static final long LAST_SECOND = 253_402_300_799L;

    private final CurvesSheets sheets;
    private final FiguresMaker figures;
    private final MessageSource words;

    CurvesPage(CurvesSheets sheets, FiguresMaker figures, MessageSource words) {
        this.sheets = sheets;
        this.figures = figures;
        this.words = words;
    }

    @GetMapping(produces = "text/html")
    String show(
            @PathVariable String id,
            @RequestParam(defaultValue = "") List<String> points,
            @RequestParam(defaultValue = "") String span,
            @RequestParam(defaultValue = "") String until,
            @RequestParam(defaultValue = "false") boolean beside,
            Model model,
            Locale locale) {
        Asked asked = Asked.of(points, span, until, beside);
        model.addAttribute("sheet", sheets.of(id, asked, new Tongue(words, locale)));
        return "curves";
    }

    /**
     * @param from in seconds since 1970, inclusive
     * @param to exclusive
     */
    @GetMapping(path = "/figures", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<Figures> figures(
            @PathVariable String id,
            @RequestParam List<String> points,
            @RequestParam long from,
            @RequestParam long to,
            @RequestParam(defaultValue = "false") boolean beside,
            Locale locale) {
        if (from < 0 || to <= from || to - from > MOST_SECONDS || to > LAST_SECOND) {
            throw Problem.notFound("there are no such figures");
        }
        List<String> chosen = points.stream()
                .filter(Objects::nonNull)
                .limit(Asked.MOST_POINTS)
                .toList();
        var stretch = new Stretch(Instant.ofEpochSecond(from), Instant.ofEpochSecond(to));
        return ResponseEntity.ok(figures.of(id, chosen, stretch, beside, new Tongue(words, locale)));
    }
}
