package yardlight.gateway.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.coverage.Why;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Wellbeing;
import yardlight.gateway.page.Tongues;

class OpenedTest {

    private static final Instant NOW = Fixtures.at("2026-11-28T12:00");
    private static final Set<Priority> LOWER = Set.of(Priority.LOW, Priority.MEDIUM);

    private static Gap gap(String from, String to) {
        return new Gap(Fixtures.at(from), Fixtures.at(to), LOWER);
    }

    private static String sign(Instant found, Gap... gaps) {
        return new Opened(found, Map.of("mesa-9", List.of(gaps))).sign();
    }

    @Test
    void have_the_same_sign_a_minute_later_also_while_one_runs_and_another_one_comes_in_sight() {
        Instant later = NOW.plusSeconds(60);
        Gap running = new Gap(NOW, Fixtures.at("2026-11-29T06:00"), LOWER);
        Gap stillRunning = new Gap(later, Fixtures.at("2026-11-29T06:00"), LOWER);
        Gap night = gap("2026-12-01T21:00", "2026-12-02T06:00");
        Gap last = new Gap(NOW.plus(Duration.ofDays(399)), NOW.plus(Duration.ofDays(400)), LOWER);

        assertThat(sign(NOW, running, night)).isEqualTo(sign(later, stillRunning, night, last));
    }

    @Test
    void have_another_sign_when_they_are_others() {
        Gap night = gap("2026-12-01T21:00", "2026-12-02T06:00");
        Gap longer = gap("2026-12-01T20:00", "2026-12-02T06:00");
        Gap higher = new Gap(night.from(), night.to(), Set.of(Priority.HIGH));

        assertThat(Set.of(
                        sign(NOW, night),
                        sign(NOW, longer),
                        sign(NOW, higher),
                        sign(NOW, night, gap("2026-12-02T21:00", "2026-12-03T06:00")),
                        new Opened(NOW, Map.of("loma-4", List.of(night))).sign()))
                .hasSize(5);
    }

    @Test
    void are_said_with_the_first_of_the_worst_and_how_many_more() {
        var words = new GapWords(Tongues.ENGLISH, Fixtures.theSetup(), NOW);
        var ahead = new Gaps.Ahead(gap("2026-11-28T21:00", "2026-11-29T06:00"), 41);

        assertThat(words.ahead("mesa-9", ahead))
                .isEqualTo("nobody would hear low and medium alarms at once Sat 9:00 PM to Sun 6:00 AM,"
                        + " and 41 more times");
        assertThat(words.ahead("mesa-9", new Gaps.Ahead(ahead.named(), 1))).endsWith(", and one more time");
        assertThat(words.span("mesa-9", NOW, Fixtures.at("2026-11-29T06:00"))).isEqualTo("from now to Sun 6:00 AM");
        assertThat(words.span("mesa-9", Fixtures.at("2026-12-04T21:00"), Fixtures.at("2026-12-05T06:00")))
                .isEqualTo("Fri 9:00 PM to Sat, Dec 5, 6:00 AM");
        assertThat(words.priorities(Set.of(Priority.values()))).isEqualTo("any");
        assertThat(words.reasons(List.of(Why.ROSTER_EMPTY, Why.QUIET_HOURS)))
                .isEqualTo("nobody is on the roster yet; quiet hours let nothing of this priority through");
        assertThat(new GapWords(Tongues.SPANISH, Fixtures.theSetup(), NOW).ahead("mesa-9", ahead))
                .startsWith("nadie se enteraría enseguida de alarmas de prioridad baja y media de sáb 21:00");
    }

    @Test
    void of_all_sites_an_alls_well_is_told_the_worst() {
        Setup setup = Fixtures.theSetup();
        Gap night = gap("2026-11-28T21:00", "2026-11-29T06:00");
        Gap critical =
                new Gap(Fixtures.at("2027-03-01T21:00"), Fixtures.at("2027-03-02T06:00"), Set.of(Priority.CRITICAL));
        var outlook = new Outlook(
                setup,
                Set.of(),
                NOW,
                Map.of("gateway", new Gaps.Ahead(night, 3), "mesa-9", new Gaps.Ahead(critical, 2)));

        assertThat(outlook.worst())
                .contains(new Wellbeing.Uncovered(
                        Fixtures.aSite(), critical.priorities(), critical.from(), critical.to(), 6));
        assertThat(new Outlook(setup, Set.of(), NOW, Map.of()).worst()).isEqualTo(Optional.empty());
    }
}
