package yardlight.gateway.account;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.PUMP;
import static yardlight.escalation.Fixtures.TANK;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.db.log.LogLine;
import yardlight.escalation.Entry;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Night;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;

class PhrasesTest {

    private static final Instant NOW = Fixtures.at("2026-11-25T02:15");

    private static Phrases in(Tongue tongue) {
        var clock = new Clockface(Fixtures.CHICAGO, NOW, tongue.locale());
        return new Phrases(new Telling(tongue, new Names(Fixtures.theSetup()), clock));
    }

    private static Optional<String> said(Tongue tongue, String words) {
        return in(tongue).of(new LogLine(1, NOW, "answer", Map.of(), words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            water-tank/high-high active 18.4 ft (limit 18.0): delayed | Reported: 18.4 ft (limit 18.0); its delay began
            water-tank/high-high active: occurred | It began
            water-tank/high-high is now unacknowledged, chattering | In alarm, and nobody has it; it chatters
            water-tank/high-high acknowledged by ana by page: on my way, is now acknowledged | Ana Ruelas has it, answered on the page: on my way
            water-tank/high-high acknowledged by ben by link, is now acknowledged | Ben Tully has it, answered by the link
            water-tank/high-high shelved by ana for PT2H: welding, is now shelved | Ana Ruelas put it aside for 2 h: welding
            water-tank/high-high note by owner: float switch sticks: new one ordered | Note by owner: float switch sticks: new one ordered
            callout 47 calls rung 2, round 1 | The ladder calls rung 2, round 1
            callout 47 calls again: what people were told is over is back | It is back after people heard that it was over: they are called again
            callout 47 is at rung 1 now: its ladder was changed | The ladder was changed: its rung 1 is where it is now
            callout 47 held until 2026-11-25T12:00:00Z: nobody on the ladder can be called before | Nobody on the ladder can be called before 6:00 AM
            box/silent is taken for power-off now, it was silent: box a says that the feed is off | Now taken for power off, before for silent
            """)
    void say_in_plain_words_what_the_log_says(String log, String words) {
        assertThat(said(Tongues.ENGLISH, log)).contains(words);
    }

    @Test
    void say_it_in_spanish_as_well() {
        assertThat(said(Tongues.SPANISH, "water-tank/high-high acknowledged by ana by link, is now acknowledged"))
                .contains("Ana Ruelas se encarga, contestó por el enlace");
        assertThat(said(Tongues.SPANISH, "callout 47 ended: returned to normal"))
                .contains("Ya no se llama: volvió a la normalidad");
        assertThat(said(Tongues.SPANISH, "callout 47 ended for water-tank/high: joined the callout with code 48"))
                .contains("Ya no se llama: sigue en la llamada con el número 48");
    }

    @Test
    void leave_what_nobody_has_other_words_for() {
        assertThat(said(Tongues.ENGLISH, "something that nobody has thought of"))
                .isEmpty();
    }

    /** What the engine writes in a night in which about everything happens to alarms; a new sentence has to be put here. */
    @Test
    void understand_whatever_the_engine_writes_of_alarms_and_calls() {
        List<Entry> written = List.of(eventful(), silent(), unanswered(), worse(), joining()).stream()
                .flatMap(night -> night.log().stream())
                .filter(entry -> Set.of(Entry.What.ALARM, Entry.What.ANSWER, Entry.What.CALLOUT)
                                .contains(entry.what())
                        || entry.what() == Entry.What.BOX && entry.about().containsKey("alarm"))
                .toList();

        assertThat(written).hasSizeGreaterThan(25);
        for (Tongue tongue : List.of(Tongues.ENGLISH, Tongues.SPANISH)) {
            Phrases phrases = in(tongue);
            assertThat(written)
                    .filteredOn(entry -> phrases.of(new LogLine(1, NOW, "any", entry.about(), entry.words()))
                            .isEmpty())
                    .isEmpty();
        }
    }

    private static Night eventful() {
        return new Night(latching())
                .active("2026-11-25T02:00", TANK, Priority.HIGH)
                .stimulus(
                        "2026-11-25T02:02",
                        new Stimulus.Shelve(TANK, Duration.ofMinutes(30), "welding, near the tank", "owner"))
                .stimulus("2026-11-25T02:04", new Stimulus.Unshelve(TANK, "owner"))
                .stimulus("2026-11-25T02:05", new Stimulus.Acknowledge(TANK, "ben", "page", Optional.of("on my way")))
                .normal("2026-11-25T02:10", TANK)
                .stimulus("2026-11-25T02:12", new Stimulus.Reset(TANK, "owner"))
                .active("2026-11-25T02:20", PUMP, Priority.HIGH)
                .normal("2026-11-25T02:20:03", PUMP)
                .active("2026-11-25T02:20:08", PUMP, Priority.HIGH)
                .setup("2026-11-25T02:30", Setup.EMPTY)
                .setup("2026-11-25T02:31", latching())
                .run("2026-11-25T03:00");
    }

    private static Night unanswered() {
        return new Night(Fixtures.theSetup())
                .active("2026-11-25T02:00", TANK, Priority.HIGH)
                .active("2026-11-25T02:01", PUMP, Priority.LOW)
                .run("2026-11-26T02:00");
    }

    private static Night worse() {
        return new Night(Fixtures.theSetup())
                .active("2026-11-25T02:00", TANK, Priority.HIGH)
                .active("2026-11-25T02:01", new AlarmKey("mesa-9", "water-tank", "overflow"), Priority.HIGH)
                .stimulus("2026-11-25T02:02", new Stimulus.Acknowledge(TANK, "ben", "page", Optional.empty()))
                .active("2026-11-25T02:03", new AlarmKey("mesa-9", "water-tank", "high"), Priority.HIGH)
                .run("2026-11-25T03:00");
    }

    private static Night joining() {
        var high = new AlarmKey("mesa-9", "water-tank", "high");
        var rising = new AlarmKey("mesa-9", "water-tank", "rising-fast");
        return new Night(Fixtures.theSetup())
                .active("2026-11-25T02:00", high, Priority.HIGH)
                .active("2026-11-25T02:01", rising, Priority.HIGH)
                .run("2026-11-25T05:00")
                .active("2026-11-25T05:10", new AlarmKey("mesa-9", "water-tank", "high-high"), Priority.HIGH)
                .run("2026-11-25T05:11");
    }

    private static Night silent() {
        return Night.withHeartbeats(Fixtures.theSetup())
                .stimulus("2026-11-25T02:00", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE))
                .run("2026-11-25T02:10")
                .stimulus("2026-11-25T02:20", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE))
                .run("2026-11-25T02:30");
    }

    private static Setup latching() {
        Point tank = Fixtures.waterTank();
        var timing = new Timing(Duration.ZERO, Duration.ZERO, true, Optional.empty(), Nuisance.Numbers.USUAL);
        var latching =
                new Point(tank.id(), tank.site(), tank.name(), tank.unit(), tank.priority(), timing, Set.of(), true);
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(latching, Fixtures.injectionPump()),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }
}
