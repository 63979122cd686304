package yardlight.escalation.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The largest value of each of the last days, one for each day that had any, oldest first.
 *
 * @param days at most {@link #KEPT}
 */
public record DailyWorst(List<Day> days) {

    public record Day(LocalDate date, double worst) {}

    public static final DailyWorst NONE = new DailyWorst(List.of());

    /** A week, and today. */
    public static final int KEPT = 8;

    public DailyWorst {
        days = List.copyOf(days);
    }

    /** As {@link #numbers} gave them. */
    public static DailyWorst of(List<Double> numbers) {
        var days = new ArrayList<Day>();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            days.add(new Day(LocalDate.ofEpochDay(numbers.get(i).longValue()), numbers.get(i + 1)));
        }
        return new DailyWorst(days);
    }

    /** Of each day its number since 1970 and the value: how a gauge remembers them. */
    public List<Double> numbers() {
        var numbers = new ArrayList<Double>();
        days.forEach(day -> {
            numbers.add((double) day.date().toEpochDay());
            numbers.add(day.worst());
        });
        return numbers;
    }

    /** With one more value of this day; of a day before the newest it changes nothing. */
    public DailyWorst plus(LocalDate date, double value) {
        if (days.stream().anyMatch(day -> day.date().isAfter(date))) {
            return this;
        }
        var kept = new ArrayList<Day>();
        double worst = value;
        for (Day day : days) {
            if (day.date().equals(date)) {
                worst = Math.max(worst, day.worst());
            } else if (day.date().isAfter(date.minusDays(KEPT))) {
                kept.add(day);
            }
        }
        kept.add(new Day(date, worst));
        return new DailyWorst(kept);
    }

    /** The largest of this day and the seven before it; empty when there is none. */
    public OptionalDouble worst(LocalDate today) {
        return days.stream()
                .filter(day -> day.date().isAfter(today.minusDays(KEPT)))
                .mapToDouble(Day::worst)
                .max();
    }
}
