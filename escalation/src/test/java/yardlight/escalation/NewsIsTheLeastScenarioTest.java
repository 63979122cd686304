package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.PUMP;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.NewsNight.calling;
import static yardlight.escalation.NewsNight.states;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.Links;

/** News wakes nobody, takes nobody's place, and is few texts. */
class NewsIsTheLeastScenarioTest {

    @Test
    void who_sleeps_by_then_hears_it_in_the_morning() {
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana", "ben"))
                .answers("ben", Duration.ofMinutes(2))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T04:02", TANK)
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly(
                        "02:22:00 ana Ben Tully has it since 2:20 AM: MESA 9 WATER TANK HIGH-HIGH",
                        "04:04:00 ben MESA 9 WATER TANK HIGH-HIGH is back to normal 4:02 AM, after 1 h 49 min. No reply needed.",
                        "06:00:00 ana MESA 9 WATER TANK HIGH-HIGH is back to normal 4:02 AM, after 1 h 49 min. No reply needed.");
    }

    @Test
    void what_would_be_half_a_day_old_is_not_told() {
        var weekend = new QuietHours(
                LocalTime.of(3, 0),
                LocalTime.of(2, 0),
                Fixtures.CHICAGO,
                Priority.CRITICAL,
                EnumSet.allOf(DayOfWeek.class));
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, List.of(quiet(Fixtures.ana(), weekend)), "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T03:01", TANK)
                .run("2026-11-26T12:00");

        assertThat(night.news()).isEmpty();
        assertThat(states(night)).containsExactly(NoticeState.CANCELLED);
        assertThat(night.timeline()).anyMatch(line -> line.contains("cancelled: it is no news any more"));
    }

    @Test
    void what_chatters_for_an_hour_is_told_once() {
        Night night =
                new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana", "ben")).answers("ben", Duration.ofMinutes(1));
        for (int minute = 10; minute < 60; minute++) {
            night.active("2026-11-25T02:" + minute, TANK).normal("2026-11-25T02:" + minute + ":20", TANK);
            night.active("2026-11-25T02:" + minute + ":30", TANK).normal("2026-11-25T02:" + minute + ":50", TANK);
        }
        night.run("2026-11-25T12:00");

        assertThat(night.news())
                .filteredOn(text -> text.contains("back to normal"))
                .hasSizeLessThanOrEqualTo(2);
        assertThat(night.news()).filteredOn(text -> text.contains(" ana ")).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void a_flood_is_over_in_a_few_texts() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"));
        for (int point = 10; point < 60; point++) {
            var key = new AlarmKey("mesa-9", "point-" + point, "high");
            night.active("2026-11-25T02:13:" + point, key, Priority.CRITICAL);
            night.normal("2026-11-25T02:16:" + point, key);
        }
        night.run("2026-11-25T12:00");

        assertThat(night.news()).hasSizeLessThanOrEqualTo(2).last().asString().contains("back to normal");
        assertThat(night.texts()).hasSizeLessThanOrEqualTo(12);
    }

    @Test
    void it_keeps_to_the_limit_of_texts() {
        Contact ana = Fixtures.ana();
        var few = new Contact(ana.id(), ana.name(), ana.zone(), ana.language(), ana.lines(), List.of(), 2);
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, List.of(few), "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:20", TANK)
                .run("2026-11-25T12:00");

        assertThat(night.news()).singleElement().asString().startsWith("03:13:00 ana ");
    }

    @Test
    void several_are_one_text() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"))
                .active("2026-11-25T02:13", TANK)
                .active("2026-11-25T02:14", PUMP)
                .normal("2026-11-25T02:40", TANK)
                .normal("2026-11-25T02:41", PUMP)
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly("02:42:00 ana 2 back to normal: MESA 9 INJECTION PUMP OFF normal 2:41 AM;"
                        + " MESA 9 WATER TANK HIGH-HIGH normal 2:40 AM. No reply needed.");
    }

    @Test
    void a_call_about_something_else_takes_it_along() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:20", TANK)
                .active("2026-11-25T02:21", PUMP)
                .run("2026-11-25T02:25");

        assertThat(night.texts().get(2).words())
                .isEqualTo("MESA 9 INJECTION PUMP OFF 2:21 AM. Reply OK 48."
                        + " Also: MESA 9 WATER TANK HIGH-HIGH normal 2:20 AM");
        assertThat(night.news()).isEmpty();
        assertThat(states(night)).containsExactly(NoticeState.BUNDLED);
    }

    @Test
    void a_call_that_says_so_anyway_says_it_alone() {
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:17", TANK)
                .run("2026-11-25T12:00");

        assertThat(night.texts())
                .extracting(Night.Text::words)
                .containsExactly(
                        "MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47",
                        "MESA 9 WATER TANK HIGH-HIGH 2:13 AM, returned 2:17 AM. Reply OK 47");
    }

    @Test
    void what_a_call_took_along_is_told_although_the_call_is_taken_back() {
        var simulation = new Simulation(
                calling(Ladder.EndsWhen.NORMAL, List.of(Fixtures.ben()), "ben"), new Escalator(Links.NONE, () -> 47));
        report(simulation, "2026-11-25T02:13", Fixtures.active(TANK, at("2026-11-25T02:13")));
        String call = simulation.picture().notices().get(0).id();
        simulation.at(at("2026-11-25T02:13"), new Stimulus.NoticeFate(call, 0, Stimulus.Fate.HANDED_OVER, "250 taken"));
        report(simulation, "2026-11-25T02:20", Fixtures.normal(TANK, at("2026-11-25T02:20")));
        report(simulation, "2026-11-25T02:21", Fixtures.active(PUMP, at("2026-11-25T02:21")));
        assertThat(newest(simulation).text()).endsWith("Also: MESA 9 WATER TANK HIGH-HIGH normal 2:20 AM");

        report(simulation, "2026-11-25T02:22", Fixtures.normal(PUMP, at("2026-11-25T02:22")));
        simulation.run(at("2026-11-25T02:30"));

        assertThat(simulation.picture().notices())
                .filteredOn(notice -> notice.state() == NoticeState.QUEUED && notice.purpose() == Purpose.NEWS)
                .singleElement()
                .extracting(Notice::text)
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH is back to normal 2:20 AM, after 7 min. No reply needed.");
    }

    private static void report(Simulation simulation, String local, Report report) {
        simulation.at(at(local), new Stimulus.Reported("mesa-9-box", List.of(report)));
        simulation.run(at(local));
    }

    private static Notice newest(Simulation simulation) {
        return simulation.picture().notices().stream()
                .filter(notice ->
                        notice.state() == NoticeState.QUEUED && notice.text().contains("PUMP"))
                .findFirst()
                .orElseThrow();
    }

    private static Contact quiet(Contact contact, QuietHours quiet) {
        return new Contact(
                contact.id(), contact.name(), contact.zone(), contact.language(), contact.lines(), List.of(quiet), 20);
    }
}
