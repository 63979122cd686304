package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;

/** Repeats, chatter and floods reach a person as few messages with a count, and the log shows every event. */
class OneCauseOneTextScenarioTest {

    private static final String START = "2026-11-25T02:13";

    @Test
    void a_repeat_makes_no_second_text() {
        Night night = new Night(theSetup()).active(START, TANK);
        for (int i = 1; i <= 20; i++) {
            night.active(after(i * 10), TANK);
        }
        night.run(after(299));

        assertThat(night.texts()).hasSize(1);
        assertThat(events(night)).isEqualTo(21);
    }

    @Test
    void thirty_changes_in_five_minutes_reach_a_contact_as_two_texts_at_most() {
        Night night = new Night(theSetup());
        chatter(night);
        night.run(after(300));

        assertThat(night.texts()).hasSizeLessThanOrEqualTo(2);
        assertThat(events(night)).isEqualTo(30);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 15, 25, 45})
    void so_does_chatter_that_is_answered(int seconds) {
        Night night = new Night(theSetup()).answers("ana", Duration.ofSeconds(seconds));
        chatter(night);
        night.run(after(900));

        assertThat(night.calls()).hasSizeLessThanOrEqualTo(2);
        assertThat(night.news()).as("that it is over, once").hasSizeLessThanOrEqualTo(1);
        assertThat(events(night)).isEqualTo(30);
    }

    @Test
    void sixty_alarms_one_a_second_reach_a_contact_as_four_texts_at_most() {
        Night night = new Night(theSetup());
        for (int i = 0; i < 60; i++) {
            night.active(after(i), new AlarmKey("mesa-9", "point-" + i, "high"), Priority.HIGH);
        }
        night.run(after(420));

        assertThat(night.texts())
                .filteredOn(text -> text.contact().equals("ana"))
                .hasSizeLessThanOrEqualTo(4);
        assertThat(night.texts()).anySatisfy(text -> assertThat(text.words()).contains("60"));
        assertThat(events(night)).isEqualTo(60);
    }

    @Test
    void so_do_sixty_that_take_a_little_more_than_a_minute() {
        Night night = new Night(theSetup());
        for (int i = 0; i < 60; i++) {
            night.active(after(i * 66 / 60), new AlarmKey("mesa-9", "point-" + i, "high"), Priority.HIGH);
        }
        night.run(after(420));

        assertThat(night.texts())
                .filteredOn(text -> text.contact().equals("ana"))
                .hasSizeLessThanOrEqualTo(4);
        assertThat(night.texts()).anySatisfy(text -> assertThat(text.words()).contains("60 alarms"));
    }

    @Test
    void a_flood_that_goes_on_is_told_again_when_it_has_doubled() {
        Night night = new Night(theSetup());
        for (int i = 0; i < 280; i++) {
            night.active(after(i), new AlarmKey("mesa-9", "point-" + i, "high"), Priority.HIGH);
        }
        night.run(after(290));

        assertThat(night.texts()).hasSize(5);
        assertThat(night.texts().get(3).words()).startsWith("MESA 9: 12");
    }

    @Test
    void a_flood_in_one_post_is_one_text_and_one_callout() {
        Night night = new Night(theSetup());
        var reports = IntStream.range(0, 60)
                .mapToObj(i -> new Report(
                        new AlarmKey("mesa-9", "point-" + i, "high"),
                        Optional.of("mesa-9-box"),
                        true,
                        Optional.of(Priority.HIGH),
                        Measured.NOTHING,
                        at(START),
                        false))
                .toList();
        night.stimulus(START, new Stimulus.Reported("mesa-9-box", reports)).run(after(10));

        assertThat(night.texts()).hasSize(1);
        assertThat(night.picture().callouts()).hasSize(1);
    }

    @Test
    void one_answer_to_a_flood_answers_all_of_it() {
        Night night = new Night(theSetup()).answers("ana", Duration.ofMinutes(3));
        for (int i = 0; i < 60; i++) {
            night.active(after(i), new AlarmKey("mesa-9", "point-" + i, "high"), Priority.HIGH);
        }
        night.run(after(600));

        assertThat(night.picture().callouts()).noneMatch(Callout::live);
        assertThat(night.picture().alarmsAt("mesa-9"))
                .noneMatch(alarm -> alarm.state().awaitsAnswer());
    }

    @Test
    void critical_gets_through_whatever_the_limit() {
        Contact ana = Fixtures.ana();
        var strict = new Contact(ana.id(), ana.name(), ana.zone(), ana.language(), ana.lines(), List.of(), 1);
        Night night = new Night(new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(),
                List.of(strict),
                List.of(),
                List.of(new Ladder(
                        "night",
                        Ladder.EndsWhen.ACKNOWLEDGED,
                        List.of(new Rung(List.of("ana"), Duration.ofMinutes(5), 1)),
                        0))));
        for (int i = 0; i < 4; i++) {
            night.active(after(i), new AlarmKey("mesa-9", "point-" + i, "high"), Priority.CRITICAL);
        }
        night.run(after(10));

        assertThat(night.texts()).hasSize(4);
    }

    private static void chatter(Night night) {
        for (int i = 0; i < 30; i++) {
            if (i % 2 == 0) {
                night.active(after(i * 10), TANK);
            } else {
                night.normal(after(i * 10), TANK);
            }
        }
    }

    private static long events(Night night) {
        return night.timeline().stream()
                .filter(line -> line.matches("\\S+ \\S+  \\S+/\\S+ (active|normal).*"))
                .count();
    }

    private static String after(int seconds) {
        Instant instant = at(START).plusSeconds(seconds);
        return LocalDateTime.ofInstant(instant, Fixtures.CHICAGO).toString();
    }
}
