package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Terms;

/** So many alarms that the site has one callout, and in the midst of it the site does not say that it is shut in. */
class ShutInInAFloodScenarioTest {

    private static final Terms TERMS = ShutInNight.BY_BOX;

    /** Everybody at once, every five minutes, twelve times: only the first few are played. */
    @Test
    void that_a_site_was_not_shut_in_is_told_to_everybody_at_once_and_by_itself() {
        Night night = flood("2026-11-28T02:01", 12);
        askedAndTaken(night, "2026-11-28T02:03:20");

        night.run("2026-11-28T02:20");

        assertThat(notConfirmed(night))
                .containsExactly(
                        "02:09:20 ana MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56",
                        "02:09:20 ben MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56",
                        "02:14:20 ana MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56",
                        "02:14:20 ben MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56",
                        "02:19:20 ana MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56",
                        "02:19:20 ben MESA 9 SHUT IN NOT CONFIRMED 2:09 AM. Reply OK 56");
    }

    @Test
    void the_callout_of_the_flood_stays_on_the_ladder_of_its_site() {
        Night night = flood("2026-11-28T02:01", 12);
        askedAndTaken(night, "2026-11-28T02:03:20");

        night.run("2026-11-28T02:31");

        assertThat(night.timeline())
                .contains("Sat 02:01:00  callout 47 calls rung 1, round 1")
                .contains("Sat 02:31:00  callout 47 calls rung 1, round 2");
        assertThat(live(night))
                .extracting(callout -> callout.facts().alarms().size())
                .containsExactly(12, 1);
    }

    @Test
    void a_flood_that_comes_after_it_does_not_join_it() {
        Night night = new Night(setup()).stimulus("2026-11-28T02:00", turnedOn());
        askedAndTaken(night, "2026-11-28T02:00:20");
        night.run("2026-11-28T02:06:20");
        alarms(night, "2026-11-28T02:07", 12);

        night.run("2026-11-28T02:09:30");

        assertThat(live(night))
                .extracting(callout -> callout.facts().alarms().size())
                .containsExactly(1, 12);
        assertThat(live(night).get(0).facts().alarms()).containsExactly(ShutInAlarm.at("mesa-9"));
        assertThat(live(night).get(1).facts().told()).containsExactly("ben");
    }

    @Test
    void in_a_text_of_many_it_comes_before_what_is_as_urgent() {
        Alarm other = Fixtures.anAlarm().draft().priority(Priority.CRITICAL).done();
        Alarm shutIn = Alarm.normal(ShutInAlarm.at("mesa-9"))
                .draft()
                .priority(Priority.CRITICAL)
                .active(true)
                .done();
        Alarm another = Alarm.normal(Fixtures.PUMP)
                .draft()
                .priority(Priority.CRITICAL)
                .active(true)
                .done();

        assertThat(List.of(other, another, shutIn).stream().sorted(Texts.WORST_FIRST))
                .first()
                .isEqualTo(shutIn);
    }

    private static List<Callout> live(Night night) {
        return night.picture().callouts().stream()
                .filter(Callout::live)
                .sorted(Callout.OLDEST_FIRST)
                .toList();
    }

    private static List<String> notConfirmed(Night night) {
        return night.texts().stream()
                .filter(text -> text.words().contains("SHUT IN NOT CONFIRMED"))
                .map(text ->
                        text.at().atZone(Fixtures.CHICAGO).toLocalTime() + " " + text.contact() + " " + text.words())
                .sorted()
                .toList();
    }

    private static Night flood(String local, int alarms) {
        Night night = new Night(setup()).stimulus("2026-11-28T02:00", turnedOn());
        alarms(night, local, alarms);
        return night;
    }

    /** Ten seconds apart, the first three critical. */
    private static void alarms(Night night, String local, int alarms) {
        for (int i = 0; i < alarms; i++) {
            String when = LocalDateTime.parse(local).plusSeconds(10L * i).toString();
            night.active(when, new AlarmKey("mesa-9", "p" + i, "off"), i < 3 ? Priority.CRITICAL : Priority.HIGH);
        }
    }

    /** The box fetches the request half a minute later, and never says that it is done. */
    private static void askedAndTaken(Night night, String local) {
        String taken = LocalDateTime.parse(local).plusSeconds(30).toString();
        night.stimulus(local, new Stimulus.ShutIn("mesa-9", new ShutInSaid.Asked(new Asker(Asker.Kind.PAGE, "ben"))))
                .stimulus(taken, new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
    }

    private static Stimulus turnedOn() {
        return new Stimulus.ShutIn("mesa-9", new ShutInSaid.TurnedOn(TERMS.words(), "owner"));
    }

    /** Ben first, who has half an hour. */
    private static Setup setup() {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ben"), Duration.ofMinutes(30), 2),
                        new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 3)),
                0);
        return new Setup(
                List.of(Fixtures.aSite().withShutIn(TERMS)),
                List.of(Fixtures.aBox()),
                List.of(),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(),
                List.of(ladder));
    }
}
