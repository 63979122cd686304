package yardlight.escalation.tank;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import yardlight.escalation.trend.DailyWorst;

/**
 * How fast a tank filled on the last days, in volume an hour. A filling counts when it is over, or with the day: one that people
 * had to be called for is no measure of what is ordinary.
 *
 * @param day of the present filling
 * @param fastest so far in it; 0 when there is none
 */
public record Inflow(LocalDate day, double fastest, DailyWorst worst) {

    public static final Inflow UNKNOWN = new Inflow(LocalDate.EPOCH, 0, DailyWorst.NONE);

    /** As {@link #numbers} gave them. */
    public static Inflow of(List<Double> numbers) {
        return numbers.isEmpty()
                ? UNKNOWN
                : new Inflow(
                        LocalDate.ofEpochDay(numbers.get(0).longValue()),
                        numbers.get(1),
                        DailyWorst.of(numbers.subList(2, numbers.size())));
    }

    /** The day, the fastest so far and the days before: how a gauge remembers them. */
    public List<Double> numbers() {
        var numbers = new ArrayList<Double>();
        numbers.add((double) day.toEpochDay());
        numbers.add(fastest);
        numbers.addAll(worst.numbers());
        return numbers;
    }

    /** It fills at this rate. */
    public Inflow filling(LocalDate today, double rate) {
        Inflow here = today.equals(day) ? this : over();
        return new Inflow(today, Math.max(here.fastest, rate), here.worst);
    }

    /** The filling is over. */
    public Inflow over() {
        return fastest > 0 ? new Inflow(day, 0, worst.plus(day, fastest)) : this;
    }

    /** The filling was not an ordinary one. */
    public Inflow forgotten() {
        return new Inflow(day, 0, worst);
    }

    /** The fastest of the last week; empty when none is known. */
    public OptionalDouble worst(LocalDate today) {
        return worst.worst(today);
    }
}
