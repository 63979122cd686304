package yardlight.gateway.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.GapWords;
import yardlight.gateway.coverage.Outlook;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Puts into words at which sites an alarm will be called to nobody, and when first. A site without a gap is not named. */
@Component
class Uncovered {

    private static final Comparator<Map.Entry<String, Gaps.Ahead>> WORST_FIRST = Comparator.comparing(
                    (Map.Entry<String, Gaps.Ahead> site) -> site.getValue().named(), Gaps.WORST_FIRST)
            .thenComparing(Map.Entry::getKey);

    private final Coverages coverages;

    Uncovered(Coverages coverages) {
        this.coverages = coverages;
    }

    List<Sheet.Gap> of(Setup setup, Tongue tongue, Instant now) {
        return of(coverages.outlook(), new GapWords(tongue, setup, now));
    }

    /** That it is not known of every site. */
    List<String> unknown(Tongue tongue) {
        return coverages.outlook().filter(found -> !found.whole()).map(any -> tongue.say("coverage.unknown")).stream()
                .toList();
    }

    static List<Sheet.Gap> of(Optional<Outlook> outlook, GapWords words) {
        return outlook.stream()
                .flatMap(found -> found.sites().entrySet().stream())
                .filter(site -> site.getValue().named().to().isAfter(words.now()))
                .sorted(WORST_FIRST)
                .map(site -> new Sheet.Gap(
                        site.getKey(),
                        new Names(words.setup()).site(site.getKey()),
                        words.ahead(site.getKey(), site.getValue())))
                .toList();
    }
}
