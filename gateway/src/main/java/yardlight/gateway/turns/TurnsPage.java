package yardlight.gateway.turns;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import yardlight.db.alarm.Told;
import yardlight.db.swap.Swaps;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.swap.Offer;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** All rosters, four weeks of each. */
@Controller
class TurnsPage {

    private final SetupInForce inForce;
    private final Desk desk;
    private final Swaps swaps;
    private final Told told;
    private final MessageSource words;
    private final InstantSource clock;

    TurnsPage(SetupInForce inForce, Desk desk, Swaps swaps, Told told, MessageSource words, InstantSource clock) {
        this.swaps = swaps;
        this.told = told;
        this.inForce = inForce;
        this.desk = desk;
        this.words = words;
        this.clock = clock;
    }

    /** @param from a day of the first week, {@code 2026-11-23}; anything else is today */
    @GetMapping(path = "/turns", produces = "text/html")
    ModelAndView show(@RequestParam(defaultValue = "") String from, Locale locale) {
        Instant now = clock.instant();
        Setup setup = inForce.setup();
        var names = new Names(setup);
        var tongue = new Tongue(words, locale);
        Optional<LocalDate> first = day(from);
        LocalDate shown = first.orElseGet(() -> LocalDate.ofInstant(
                now,
                setup.rosters().values().stream().findFirst().map(Roster::zone).orElse(ZoneOffset.UTC)));
        var balance = new Balance(told.texts(now.minus(Duration.ofDays(7L * Balance.WEEKS))), now);
        List<Offer> offers = swaps.open(now);
        List<TurnsSheet> sheets = setup.rosters().values().stream()
                .map(roster -> new Calendar(roster, names, tongue, now).of(first, balance, offers))
                .toList();
        return new ModelAndView("turns")
                .addObject("sheets", sheets)
                .addObject("seen", desk.look().version())
                .addObject("earlier", shown.minusWeeks(Calendar.WEEKS))
                .addObject("later", shown.plusWeeks(Calendar.WEEKS))
                .addObject("moved", first.isPresent());
    }

    /** Years of four digits: further than that nobody plans. */
    static Optional<LocalDate> day(String written) {
        try {
            return written.matches("\\d{4}-\\d{2}-\\d{2}") ? Optional.of(LocalDate.parse(written)) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
