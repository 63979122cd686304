package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * An alarm is there for a minute and gone for two, all night, nobody answers, and each rung's person is called five times every two
 * minutes: five texts an hour to each. What is said beside that, that it is over and that it is back, must not use up what a person
 * may get in an hour, or they hear of another site too late.
 */
class FlutteringSiteScenarioTest {

    private static final Instant BEGIN = Fixtures.at("2026-11-25T01:00");
    private static final AlarmKey ELSEWHERE = new AlarmKey("loma-4", "separator", "high");
    private static final int PEOPLE = 6;

    @Test
    void nobody_gets_many_more_texts_than_the_ladder_calls_them() {
        Night night = fluttering().run("2026-11-25T07:00");

        var hourly = night.texts().stream()
                .collect(Collectors.groupingBy(
                        text -> text.contact()
                                + Duration.between(BEGIN, text.at()).toHours(),
                        Collectors.counting()));
        assertThat(hourly).isNotEmpty();
        assertThat(hourly.values()).allSatisfy(texts -> assertThat(texts).isLessThanOrEqualTo(7));
    }

    @Test
    void an_alarm_at_another_site_arrives_at_once() {
        Night night = fluttering()
                .active("2026-11-25T03:00:07", ELSEWHERE, Priority.HIGH)
                .run("2026-11-25T05:00");

        assertThat(night.texts())
                .filteredOn(text -> text.words().contains("LOMA 4"))
                .first()
                .extracting(Night.Text::at)
                .isEqualTo(Fixtures.at("2026-11-25T03:00:07"));
    }

    private static Night fluttering() {
        var night = new Night(setup());
        for (int second = 0; second < 2 * 3_600; second += 180) {
            night.active(local(second), Fixtures.TANK).normal(local(second + 60), Fixtures.TANK);
        }
        return night;
    }

    private static String local(int second) {
        return BEGIN.plusSeconds(second)
                .atZone(Fixtures.CHICAGO)
                .toLocalDateTime()
                .toString();
    }

    private static Setup setup() {
        List<String> ids = IntStream.range(0, PEOPLE).mapToObj(i -> "p" + i).toList();
        Contact ana = Fixtures.ana();
        var night = ids.stream()
                .map(id -> new Rung(List.of(id), Duration.ofMinutes(2), 5))
                .toList();
        var elsewhere = List.of(new Rung(List.of("p0"), Duration.ofMinutes(30), 1));
        return new Setup(
                List.of(Fixtures.aSite(), new Site("loma-4", "Loma 4", Fixtures.CHICAGO, "elsewhere")),
                List.of(
                        Fixtures.aBox(),
                        new Box(
                                "loma-4-box",
                                "loma-4",
                                Optional.empty(),
                                Optional.empty(),
                                true,
                                Optional.empty(),
                                Duration.ofMinutes(2))),
                List.of(Fixtures.waterTank()),
                ids.stream()
                        .map(id -> new Contact(id, id, ana.zone(), ana.language(), ana.lines(), List.of(), 20))
                        .toList(),
                List.of(),
                List.of(
                        new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, night, 0),
                        new Ladder("elsewhere", Ladder.EndsWhen.ACKNOWLEDGED, elsewhere, 0)));
    }
}
