package yardlight.escalation.runtime;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A run time as plain numbers: how a gauge remembers it. Times are kept to the second. */
public final class Numbers {

    private static final int DAY = 5;
    private static final int SEGMENT = 3;

    private Numbers() {}

    /** How many days, five numbers for each of them, and three for each segment. */
    public static List<Double> of(RunTime runTime) {
        var numbers = new ArrayList<Double>();
        numbers.add((double) runTime.days().size());
        for (Day day : runTime.days()) {
            numbers.add((double) day.date().toEpochDay());
            numbers.add((double) day.on().toSeconds());
            numbers.add((double) day.known().toSeconds());
            numbers.add((double) day.starts());
            numbers.add((double) day.longest().toSeconds());
        }
        for (Segment segment : runTime.segments()) {
            numbers.add((double) segment.from().getEpochSecond());
            numbers.add((double) segment.to().getEpochSecond());
            numbers.add(segment.on() ? 1.0 : 0.0);
        }
        return numbers;
    }

    /** The run time that these numbers were made of; none at all is one that never ran. */
    public static RunTime read(List<Double> numbers) {
        if (numbers.isEmpty()) {
            return RunTime.NONE;
        }
        int days = numbers.get(0).intValue();
        int end = 1 + days * DAY;
        var sums = new ArrayList<Day>();
        for (int i = 1; i < end; i += DAY) {
            sums.add(new Day(
                    LocalDate.ofEpochDay(numbers.get(i).longValue()),
                    Duration.ofSeconds(numbers.get(i + 1).longValue()),
                    Duration.ofSeconds(numbers.get(i + 2).longValue()),
                    numbers.get(i + 3).intValue(),
                    Duration.ofSeconds(numbers.get(i + 4).longValue())));
        }
        var segments = new ArrayList<Segment>();
        for (int i = end; i < numbers.size(); i += SEGMENT) {
            segments.add(new Segment(
                    Instant.ofEpochSecond(numbers.get(i).longValue()),
                    Instant.ofEpochSecond(numbers.get(i + 1).longValue()),
                    numbers.get(i + 2) > 0));
        }
        return new RunTime(segments, sums);
    }
}
