package yardlight.gateway.suggest;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import yardlight.escalation.rehearsal.Suggestions;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.wire.Spans;

/** What a point would have called in the last 30 days, for the one who sets it up. */
@Controller
class SuggestionsPage {

    /** One way to set the point up, in words, and how often it would have called. */
    record Row(String how, String calls, boolean asIs) {}

    private final Suggesting suggesting;
    private final SetupInForce inForce;
    private final MessageSource words;

    SuggestionsPage(Suggesting suggesting, SetupInForce inForce, MessageSource words) {
        this.suggesting = suggesting;
        this.inForce = inForce;
        this.words = words;
    }

    @GetMapping(path = "/sites/{site}/points/{point}/replay", produces = "text/html")
    ModelAndView show(@PathVariable String site, @PathVariable String point, Locale locale) {
        Suggesting.Found found = suggesting.of(site, point);
        Setup setup = inForce.setup();
        Tongue tongue = new Tongue(words, locale);
        String unit = setup.known(site, point).flatMap(Point::unit).orElse("");
        List<Row> rows =
                found.suggestions().stream().map(one -> row(tongue, one, unit)).toList();
        return new ModelAndView("replay")
                .addObject("siteId", site)
                .addObject("site", new Names(setup).site(site))
                .addObject("pointId", point)
                .addObject("point", setup.point(site, point).name())
                .addObject("readings", tongue.count("replay.readings", found.readings()))
                .addObject("rows", rows);
    }

    private static Row row(Tongue tongue, Suggestions.Suggestion one, String unit) {
        var how = new ArrayList<String>();
        how.add(
                one.onDelay().isZero()
                        ? tongue.say("replay.at-once")
                        : tongue.say("replay.after", Spans.words(one.onDelay(), tongue)));
        one.deadband()
                .filter(band -> band.signum() > 0)
                .map(BigDecimal::toPlainString)
                .ifPresent(band ->
                        how.add(tongue.say("replay.deadband", band, unit).strip()));
        return new Row(
                String.join(", ", how), tongue.count("replay.calls", one.calls().size()), one.asIs());
    }
}
