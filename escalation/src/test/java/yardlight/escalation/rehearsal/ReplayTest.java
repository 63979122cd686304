package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A replay says what the engine itself would have done. */
class ReplayTest {

    private static final Instant START = Fixtures.at("2026-10-25T00:00");

    /** A level that comes and goes about its limits with noise, read every half a minute, with gaps. */
    private static List<Reading> drawn(long seed) {
        var random = new Random(seed);
        var readings = new ArrayList<Reading>();
        Instant at = START;
        for (int i = 0; i < 3_000; i++) {
            double value = 10 + 8.5 * Math.sin(i / 200.0) + random.nextGaussian() * 0.4;
            readings.add(new Reading("mesa-9", "water-tank", value, at));
            at = at.plusSeconds(random.nextInt(400) == 0 ? 3_000 : 30);
        }
        return readings;
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 0", "2, 20, 0", "3, 60, 60", "4, 300, 0", "5, 0, 600", "6, 45, 45"})
    void calls_as_often_and_as_long_as_the_engine_does(long seed, int onDelay, int offDelay) {
        var timing = new Timing(
                Duration.ofSeconds(onDelay),
                Duration.ofSeconds(offDelay),
                false,
                Optional.empty(),
                Nuisance.Numbers.USUAL);
        Point point = Fixtures.measuredTank().with(timing);
        List<Reading> readings = drawn(seed);

        List<Replay.Called> replayed = Replay.of(point, readings);

        assertThat(replayed).hasSizeGreaterThan(10).containsExactlyInAnyOrderElementsOf(engine(point, readings));
        assertThat(replayed).extracting(Replay.Called::condition).contains("high-high", "low", "missing");
    }

    /** The whole engine, with a box that sends no heartbeats, and somebody who answers at once. */
    private static List<Replay.Called> engine(Point point, List<Reading> readings) {
        var box = new Box("b", "mesa-9", Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO);
        var setup = new Setup(List.of(Fixtures.aSite()), List.of(box), List.of(point), List.of(), List.of(), List.of());
        var night = new Simulation(setup, new Escalator(Links.NONE, new AtomicInteger()::incrementAndGet));
        Map<String, Replay.Called> calls = new LinkedHashMap<>();
        var unanswered = Set.of(AlarmState.UNACKNOWLEDGED, AlarmState.RETURNED_UNACKNOWLEDGED);
        night.watch(happening -> happening.decision().changes().alarms().stream()
                .filter(alarm -> alarm.occurrence() > 0)
                .forEach(alarm -> {
                    Instant at = alarm.occurredAt().orElseThrow();
                    calls.put(alarm.id(), new Replay.Called(alarm.key().condition(), at, alarm.returnedAt()));
                    if (unanswered.contains(alarm.state())) {
                        night.at(
                                happening.at(), new Stimulus.Acknowledge(alarm.key(), "ana", "page", Optional.empty()));
                    }
                }));
        readings.forEach(reading -> night.at(reading.at(), new Stimulus.Measured("b", List.of(reading))));
        night.run(readings.get(readings.size() - 1).at());
        return List.copyOf(calls.values());
    }
}
