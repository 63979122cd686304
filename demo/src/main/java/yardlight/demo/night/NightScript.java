package yardlight.demo.night;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** What happens in the night, by the clock on the wall of the places. */
final class NightScript {

    /** What is done to the made-up places. */
    enum Deed {
        EVERYBODY_BEATS,
        TANK_RISES,
        FLOAT_CHATTERS,
        BATTERY_RUNS_LOW,
        LINK_BREAKS,
        TANK_FALLS,
        LINK_MENDS,
        QUIET_ENDS,
        END
    }

    /** One thing that happens. */
    record Act(LocalTime at, Deed deed) {}

    /**
     * How somebody treats a text.
     *
     * @param awakeFrom texts before this are slept through and not looked at later
     * @param takes how long they need from the text to the answer
     */
    record Habit(LocalTime awakeFrom, Duration takes) {}

    static final LocalDate DATE = LocalDate.of(2026, 11, 25);
    static final LocalTime QUIET_ENDS = LocalTime.of(6, 0);

    private static final Habit ANA = new Habit(LocalTime.of(2, 35), Duration.ofMinutes(3));
    private static final Habit BEN = new Habit(LocalTime.MIDNIGHT, Duration.ofMinutes(2));

    private NightScript() {}

    /** The acts in their order. */
    static List<Act> acts() {
        return List.of(
                new Act(LocalTime.of(1, 55), Deed.EVERYBODY_BEATS),
                new Act(LocalTime.of(2, 13), Deed.TANK_RISES),
                new Act(LocalTime.of(2, 40), Deed.FLOAT_CHATTERS),
                new Act(LocalTime.of(2, 55), Deed.BATTERY_RUNS_LOW),
                new Act(LocalTime.of(3, 20), Deed.LINK_BREAKS),
                new Act(LocalTime.of(4, 5), Deed.TANK_FALLS),
                new Act(LocalTime.of(4, 30), Deed.LINK_MENDS),
                new Act(QUIET_ENDS, Deed.QUIET_ENDS),
                new Act(LocalTime.of(6, 10), Deed.END));
    }

    static Instant instant(LocalTime at, ZoneId zone) {
        return DATE.atTime(at).atZone(zone).toInstant();
    }

    /** When somebody answers a text that came at this instant; empty when they do not. */
    static Optional<Instant> answersAt(String person, Instant textAt, ZoneId zone) {
        Optional<Habit> habit = switch (person) {
            case "ana" -> Optional.of(ANA);
            case "ben" -> Optional.of(BEN);
            default -> Optional.empty();
        };
        return habit.filter(one -> !textAt.isBefore(instant(one.awakeFrom(), zone)))
                .map(one -> textAt.plus(one.takes()));
    }
}
