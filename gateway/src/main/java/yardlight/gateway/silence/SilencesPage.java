package yardlight.gateway.silence;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import yardlight.db.alarm.Silences;
import yardlight.db.alarm.Silences.Tally;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxMonth;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** Why boxes were silent, in words, and how often the first word was right. */
@Controller
class SilencesPage {

    private static final int MOST = 50;
    private static final Duration TWO_MONTHS = Duration.ofDays(62);
    private static final int MOST_COUNTED = 5_000;

    /** One silence in words. */
    record Card(String name, String verdict, String when, List<String> boxes, List<String> reasons) {}

    private final Silences silences;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    SilencesPage(Silences silences, SetupInForce inForce, MessageSource words, InstantSource clock) {
        this.silences = silences;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = "/silences", produces = "text/html")
    String show(Model model, Locale locale) {
        var tongue = new Tongue(words, locale);
        Instant now = clock.instant();
        List<Tally> tally = silences.tally(now.minus(SilencesController.YEAR));
        model.addAttribute("right", right(tally, tongue));
        model.addAttribute("rows", tally.stream().map(one -> row(one, tongue)).toList());
        model.addAttribute(
                "cards",
                silences.newest(MOST).stream()
                        .map(one -> card(one, now, tongue))
                        .toList());
        model.addAttribute("months", months(now, tongue));
        return "silences";
    }

    /** An undecided word is neither right nor wrong. */
    private static String right(List<Tally> tally, Tongue tongue) {
        long definite = tally.stream()
                .filter(one -> one.told() != Verdict.SILENT)
                .mapToLong(Tally::count)
                .sum();
        long right = tally.stream()
                .filter(one -> one.told() != Verdict.SILENT && one.told() == one.settled())
                .mapToLong(Tally::count)
                .sum();
        return definite == 0 ? tongue.say("silences.none") : tongue.say("silences.right", definite, right);
    }

    private static String row(Tally tally, Tongue tongue) {
        return tongue.say(
                "silences.tally", tally.count(), spoken(tally.told(), tongue), spoken(tally.settled(), tongue));
    }

    private List<String> months(Instant now, Tongue tongue) {
        Setup setup = inForce.setup();
        return BoxMonth.of(
                        silences.since(now.minus(TWO_MONTHS), MOST_COUNTED),
                        new Names(setup)::zone,
                        box -> Optional.ofNullable(setup.boxes().get(box)).flatMap(Box::every))
                .stream()
                .map(month -> row(month, tongue))
                .toList();
    }

    private static String row(BoxMonth month, Tongue tongue) {
        String when = month.month().format(DateTimeFormatter.ofPattern("MMMM uuuu", tongue.locale()));
        return tongue.say(
                "silences.month",
                month.box(),
                when,
                month.silences(),
                month.wrong(),
                month.found().toSeconds());
    }

    private Card card(Absence absence, Instant now, Tongue tongue) {
        var names = new Names(inForce.setup());
        var clockface = new Clockface(names.zone(absence.key().site()), now, tongue.locale());
        String since = clockface.read(absence.since());
        String when = absence.endedAt()
                .map(end -> tongue.say("silences.over", since, clockface.read(end)))
                .orElse(tongue.say("silences.lasts", since, clockface.ago(absence.since())));
        var reasons = new ArrayList<String>();
        if (absence.told() != absence.verdict()) {
            reasons.add(tongue.say("silences.told", spoken(absence.told(), tongue)));
        }
        absence.judgement().evidence().values().forEach(one -> reasons.add(tongue.say(one.sentence())));
        String share = absence.members().size() == 1
                ? ""
                : ", "
                        + tongue.say(
                                "silences." + absence.shared().kind().name().toLowerCase(Locale.ROOT)) + " "
                        + absence.shared().name();
        long percent = Math.round(absence.judgement().confidence() * 100);
        return new Card(
                names.site(absence.key().site()) + share,
                spoken(absence.verdict(), tongue) + " (" + percent + " %)",
                when,
                List.copyOf(absence.members().keySet()),
                reasons);
    }

    private static String spoken(Verdict verdict, Tongue tongue) {
        return tongue.say("silences.verdict." + verdict.condition());
    }
}
