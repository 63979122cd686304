package yardlight.demo.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.demo.lease.LeaseDesign;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.limit.Change;
import yardlight.escalation.limit.Drift;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.trend.FallRules;
import yardlight.escalation.wording.Links;

/**
 * False alarms on a level that was really measured: the sea at Mayport, Florida, in January 2017, hour by hour (NOAA, station
 * 8720218, public domain; see the file). Nothing was wrong there, so every alarm is a false one. The values are as an open
 * program for tides keeps them for its tests, and were not compared with NOAA's own service.
 */
class MeasuredLevelTest {

    private static final Instant START = Instant.parse("2017-01-01T00:00:00Z");
    private static final Duration HOUR = Duration.ofHours(1);

    /** After so many days somebody sets the limits by what was seen until then. */
    private static final int SEEN = 5 * 24;

    @Test
    void a_level_that_goes_its_usual_ways_calls_nobody_by_limits_that_were_set_after_five_days() throws IOException {
        double[] level = measured();

        Map<String, Integer> alarms = alarms(level, rules(Arrays.copyOf(level, SEEN), 0.25));

        double months = (level.length - SEEN) / 24.0 / 30;
        System.out.printf(
                "sea at Mayport, %.2f months at a reading an hour: %s, in all %.1f false alarms a month%n",
                months, alarms, sum(alarms) / months);
        assertThat(alarms).isEmpty();
    }

    /** Else the test before could not fail. */
    @Test
    void limits_without_room_call_again_and_again() throws IOException {
        double[] level = measured();

        Map<String, Integer> alarms = alarms(level, rules(Arrays.copyOf(level, SEEN), 0));

        assertThat(alarms).containsKeys("high", "low");
        assertThat(sum(alarms)).isGreaterThanOrEqualTo(4);
    }

    private static int sum(Map<String, Integer> alarms) {
        return alarms.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** @param room beyond what was seen, as a share of its range */
    private static Rules rules(double[] seen, double room) {
        double least = Arrays.stream(seen).min().orElseThrow();
        double most = Arrays.stream(seen).max().orElseThrow();
        double range = most - least;
        double fastest = 0;
        for (int hour = 3; hour < seen.length; hour++) {
            fastest = Math.max(fastest, Math.abs(seen[hour] - seen[hour - 3]));
        }
        var limits = new Limits(
                Optional.empty(),
                Optional.of(metres(most + room * range)),
                Optional.of(metres(least - room * range)),
                Optional.empty(),
                metres(0.05 * range));
        Optional<BigDecimal> by = Optional.of(metres(fastest * (1 + 2 * room)));
        return new Rules(
                Optional.of(limits),
                Optional.of(new Change(by, by, HOUR.multipliedBy(3))),
                Optional.of(new Drift(metres((least + most) / 2), metres(range / 2), metres(2 * range))),
                Optional.of(HOUR.multipliedBy(3)),
                Optional.of(HOUR.multipliedBy(3)),
                Optional.empty());
    }

    private static BigDecimal metres(double metres) {
        return BigDecimal.valueOf(metres).setScale(3, RoundingMode.HALF_UP);
    }

    /** How often each condition came up after the days in which the limits were found. */
    private static Map<String, Integer> alarms(double[] level, Rules rules) {
        Setup study = StudySetup.of(LeaseDesign.plain());
        var falls = new FallRules(HOUR.multipliedBy(4), 1.5, 0.1, Duration.ofDays(5));
        Point point = Point.unknown("level", StudySetup.SITE)
                .with(rules)
                .with(new Equipment(Optional.empty(), Optional.empty(), Optional.of(falls)));
        var setup = new Setup(
                List.<Site>copyOf(study.sites().values()),
                List.copyOf(study.boxes().values()),
                List.of(point),
                List.copyOf(study.contacts().values()),
                List.of(),
                List.copyOf(study.ladders().values()));
        var code = new AtomicInteger(11);
        var simulation = new Simulation(setup, new Escalator(Links.NONE, code::getAndIncrement));
        for (int hour = 0; hour < level.length; hour++) {
            Instant at = START.plus(HOUR.multipliedBy(hour));
            var reading = new Reading(StudySetup.SITE, "level", level[hour], at);
            simulation.at(at, new Stimulus.Measured(StudySetup.BOX, List.of(reading)));
            simulation.run(at);
        }
        var count = new TreeMap<String, Integer>();
        simulation.picture().alarms().stream()
                .filter(alarm -> alarm.key().point().equals("level") && alarm.occurrence() > 0)
                .sorted(Comparator.comparing(Alarm::key))
                .forEach(alarm -> count.put(alarm.key().condition(), alarm.occurrence()));
        return count;
    }

    private static double[] measured() throws IOException {
        try (InputStream file = MeasuredLevelTest.class.getResourceAsStream("mayport-2017-01.txt")) {
            var values = new ArrayList<Double>();
            for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#")) {
                    Arrays.stream(line.split(" ")).forEach(value -> values.add(Integer.parseInt(value) / 1000.0));
                }
            }
            assertThat(values).hasSize(25 * 24);
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
