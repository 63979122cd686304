package yardlight.gateway.strip;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yardlight.db.reading.Sample;
import yardlight.gateway.page.Clockface;

/** Draws a {@link Strip}. */
record Drawn(Stretch stretch, List<Sample> samples, List<Limit> limits, List<Trouble> troubles, Axis axis) {

    private static final int FIGURES = 4;
    private static final int TIMES = 5;
    private static final double EDGE = 0.06;
    private static final int TOOTH = 5;
    private static final int TEETH = 40;

    static Drawn of(Stretch stretch, List<Sample> samples, List<Limit> limits, List<Trouble> troubles) {
        return new Drawn(stretch, samples, limits, troubles, Axis.around(samples, limits, FIGURES));
    }

    List<String> lines() {
        return Runs.of(samples).stream().map(this::line).toList();
    }

    private String line(List<Sample> run) {
        String way = run.stream()
                .map(sample -> along(sample.at()) + "," + down(sample.mean()))
                .collect(Collectors.joining(" ", "M", ""));
        // A single reading is a dot: a line without length, with round ends.
        return run.size() == 1 ? way + "h0.1" : way;
    }

    List<String> bands() {
        return Runs.of(samples).stream()
                .filter(run -> run.size() > 1 && run.stream().anyMatch(sample -> sample.max() > sample.min()))
                .map(this::band)
                .toList();
    }

    private String band(List<Sample> run) {
        var path = new StringBuilder("M");
        run.forEach(sample -> path.append(along(sample.at()))
                .append(',')
                .append(down(sample.max()))
                .append(' '));
        for (int i = run.size() - 1; i >= 0; i--) {
            Sample sample = run.get(i);
            path.append(along(sample.at()))
                    .append(',')
                    .append(down(sample.min()))
                    .append(' ');
        }
        return path.append('z').toString();
    }

    List<Strip.Mark> figures() {
        return axis.marks().stream()
                .map(value -> new Strip.Mark(down(value), axis.words(value)))
                .toList();
    }

    /** Those at the edges would be cut off. */
    List<Strip.Mark> times(Clockface clock) {
        boolean days = stretch.length().toHours() > 48;
        return RoundTimes.between(stretch.from(), stretch.to(), clock.zone(), TIMES).stream()
                .filter(at -> stretch.along(at) > EDGE && stretch.along(at) < 1 - EDGE)
                .map(at -> new Strip.Mark(
                        percent(stretch.along(at)),
                        days ? clock.read(at.atZone(clock.zone()).toLocalDate()) : clock.time(at)))
                .toList();
    }

    List<Strip.Edge> edges() {
        return limits.stream()
                .filter(limit -> axis.up(limit.value()) >= 0 && axis.up(limit.value()) <= 1)
                .map(this::edge)
                .toList();
    }

    private Strip.Edge edge(Limit limit) {
        double y = pixel(limit.value());
        double tip = limit.above() ? y - TOOTH : y + TOOTH;
        var teeth = new StringBuilder();
        for (int x = TEETH / 2; x < Strip.WIDE; x += TEETH) {
            teeth.append('M').append(x).append(',').append(number(y)).append('L');
            teeth.append(x + TOOTH).append(',').append(number(tip));
        }
        String label = number(limit.above() ? y + 13 : y - 5);
        return new Strip.Edge(number(y), limit.words() + " " + Rounded.of(limit.value()), label, teeth.toString());
    }

    List<Strip.Bar> bars() {
        var bars = new ArrayList<Strip.Bar>();
        for (Trouble trouble : troubles) {
            double from = stretch.along(stretch.within(trouble.from()));
            double to = stretch.along(stretch.within(trouble.to()));
            bars.add(new Strip.Bar(percent(from), percent(Math.max(to - from, 0.004)), trouble.words()));
        }
        return bars;
    }

    private String along(Instant at) {
        return number(stretch.along(at) * Strip.WIDE);
    }

    private String down(double value) {
        return number(pixel(value));
    }

    private double pixel(double value) {
        return Strip.BOTTOM - axis.up(value) * (Strip.BOTTOM - Strip.TOP);
    }

    private static String percent(double part) {
        return number(part * 100) + "%";
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
