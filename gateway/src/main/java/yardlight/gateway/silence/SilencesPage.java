package yardlight.gateway.silence;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import yardlight.gateway.setup.SetupInForce;

/** Why boxes were silent, in words, and how often the first word was right. */
@Controller
class SilencesPage {

    private static final int MOST = 50;
    private static final Duration TWO_MONTHS = Duration.ofDays(62);
    private static final int MOST_COUNTED = 5_000;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    /** One silence in words. */
    record Card(String name, String verdict, String when, List<String> boxes, List<String> reasons) {}

    private final Silences silences;
    private final SetupInForce inForce;
    private final InstantSource clock;

    SilencesPage(Silences silences, SetupInForce inForce, InstantSource clock) {
        this.silences = silences;
        this.inForce = inForce;
        this.clock = clock;
    }

    @GetMapping(path = "/silences", produces = "text/html")
    String show(Model model) {
        Instant now = clock.instant();
        List<Tally> tally = silences.tally(now.minus(SilencesController.YEAR));
        model.addAttribute("right", right(tally));
        model.addAttribute("rows", tally.stream().map(SilencesPage::row).toList());
        model.addAttribute(
                "cards",
                silences.newest(MOST).stream().map(one -> card(one, now)).toList());
        model.addAttribute("months", months(now));
        return "silences";
    }

    /** An undecided word is neither right nor wrong. */
    private static String right(List<Tally> tally) {
        long definite = tally.stream()
                .filter(one -> one.told() != Verdict.SILENT)
                .mapToLong(Tally::count)
                .sum();
        long right = tally.stream()
                .filter(one -> one.told() != Verdict.SILENT && one.told() == one.settled())
                .mapToLong(Tally::count)
                .sum();
        return definite == 0
                ? "No silence was read as power or link in the last year."
                : "Of " + definite + " that were read as power or link in the last year " + right + " were right.";
    }

    private static String row(Tally tally) {
        return tally.count() + " told as " + spoken(tally.told()) + ", in the end " + spoken(tally.settled());
    }

    private List<String> months(Instant now) {
        Setup setup = inForce.setup();
        return BoxMonth.of(
                        silences.since(now.minus(TWO_MONTHS), MOST_COUNTED),
                        new Names(setup)::zone,
                        box -> Optional.ofNullable(setup.boxes().get(box)).flatMap(Box::every))
                .stream()
                .map(SilencesPage::row)
                .toList();
    }

    private static String row(BoxMonth month) {
        return month.box() + ", " + MONTH.format(month.month()) + ": " + month.silences()
                + (month.silences() == 1 ? " alarm, " : " alarms, ")
                + (month.wrong() == 0 ? "none" : month.wrong()) + " wrong, found after "
                + month.found().toSeconds() + " s";
    }

    private Card card(Absence absence, Instant now) {
        var names = new Names(inForce.setup());
        var clockface = new Clockface(names.zone(absence.key().site()), now, Locale.ENGLISH);
        String until = absence.endedAt()
                .map(end -> ", back " + clockface.read(end))
                .orElse(", for " + Clockface.ago(absence.since(), now));
        var reasons = new ArrayList<String>();
        if (absence.told() != absence.verdict()) {
            reasons.add("told as " + spoken(absence.told()));
        }
        reasons.addAll(absence.judgement().reasons());
        String share = absence.members().size() == 1
                ? ""
                : ", " + absence.shared().kind().name().toLowerCase(Locale.ROOT) + " "
                        + absence.shared().name();
        long percent = Math.round(absence.judgement().confidence() * 100);
        return new Card(
                names.site(absence.key().site()) + share,
                spoken(absence.verdict()) + " (" + percent + " %)",
                "since " + clockface.read(absence.since()) + until,
                List.copyOf(absence.members().keySet()),
                reasons);
    }

    private static String spoken(Verdict verdict) {
        return switch (verdict) {
            case POWER_OFF -> "power off";
            case COMMS_LOSS -> "comms lost";
            case SILENT -> "not known";
        };
    }
}
