package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;

class BoxMonthTest {

    private static final Instant FOUND = at("2026-11-25T02:13");
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final List<Absence> absences = new ArrayList<>();

    @Test
    void counts_silences_and_how_soon_they_were_found() {
        silent("a", FOUND, Duration.ofSeconds(120), Optional.of(Duration.ofHours(1)), List.of());
        silent("a", FOUND.plusSeconds(9_000), Duration.ofSeconds(180), Optional.empty(), List.of());
        silent("b", FOUND, Duration.ofSeconds(600), Optional.empty(), List.of());

        assertThat(months())
                .containsExactly(
                        new BoxMonth("a", YearMonth.of(2026, 11), 2, 0, Duration.ofSeconds(150)),
                        new BoxMonth("b", YearMonth.of(2026, 11), 1, 0, Duration.ofSeconds(600)));
    }

    @Test
    void counts_a_box_that_was_back_within_one_more_interval_as_wrong() {
        silent("a", FOUND, MINUTE, Optional.of(MINUTE), List.of(Clue.RAN_ON));
        silent("a", FOUND, MINUTE, Optional.of(MINUTE.plusMillis(1)), List.of(Clue.RAN_ON));

        assertThat(months().get(0).wrong()).isEqualTo(1);
    }

    @Test
    void does_not_count_as_wrong_a_box_that_started_anew() {
        silent("a", FOUND, MINUTE, Optional.of(MINUTE), List.of(Clue.RESTARTED));

        assertThat(months().get(0).wrong()).isZero();
    }

    @Test
    void counts_of_those_that_were_silent_together_the_one_that_was_missed_first() {
        silent("a", FOUND, MINUTE, Optional.empty(), List.of(Clue.RAN_ON));
        absences.set(0, absences.get(0).joined("b", FOUND));

        assertThat(months()).extracting(BoxMonth::box).containsExactly("a");
    }

    @Test
    void goes_by_the_calendar_of_the_site() {
        Instant lastEvening = at("2026-10-31T23:59");
        silent("a", lastEvening, MINUTE, Optional.empty(), List.of());
        silent("a", lastEvening.plus(MINUTE), MINUTE, Optional.empty(), List.of());

        assertThat(months())
                .extracting(BoxMonth::month)
                .containsExactly(YearMonth.of(2026, 11), YearMonth.of(2026, 10));
    }

    private List<BoxMonth> months() {
        return BoxMonth.of(absences, site -> CHICAGO, box -> Optional.of(MINUTE));
    }

    private void silent(String box, Instant found, Duration after, Optional<Duration> back, List<Clue> clues) {
        List<Evidence> evidence =
                clues.stream().map(clue -> new Evidence(clue, found, box)).toList();
        var member = new Absence.Member(found.minus(after), back.map(found::plus));
        absences.add(new Absence(
                "mesa-9.box.silent." + absences.size(),
                new AlarmKey("mesa-9", "box", "silent"),
                Path.site("mesa-9"),
                Path.site("mesa-9"),
                found.minus(after),
                found,
                new TreeMap<>(Map.of(box, member)),
                Verdict.SILENT,
                Judgement.by(evidence),
                Optional.empty()));
    }
}
