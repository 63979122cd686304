package yardlight.escalation.filling;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Optional;
import java.util.SplittableRandom;
import yardlight.escalation.trend.Reach;
import yardlight.escalation.trend.Sample;
import yardlight.escalation.trend.Series;
import yardlight.escalation.trend.Trend;
import yardlight.escalation.trend.Turning;

/**
 * What was foretold so long before a tank ran over.
 *
 * @param actual minutes that it took
 */
record Mark(double actual, Optional<Reach> reach) {

    private static final Instant START = Instant.parse("2026-11-28T00:00:00Z");
    /** One of 100 of the height, as the engine has it. */
    private static final double TURN = 0.01;

    private static final int HOURS = 6;

    static Mark of(World world, long seed, int number, int before, int every) {
        Filling filling = Filling.draw(world, source(seed, number));
        int now = filling.over() - before;
        Series series = kept(filling, now, every);
        if (series.isEmpty()) {
            return new Mark(before, Optional.empty());
        }
        double actual =
                filling.over() - Duration.between(START, series.last().at()).toMinutes();
        double least = TURN * filling.tank().capacity();
        double brim = filling.tank().capacity();
        return new Mark(actual, Trend.of(Turning.stretch(series, least)).map(trend -> Reach.to(brim, trend)));
    }

    /** As a gauge keeps them: of the last hour each minute, of what is older the first of each ten. */
    private static Series kept(Filling filling, int now, int every) {
        var samples = new ArrayList<Sample>();
        long last = -1;
        for (int minute = Math.max(0, now - HOURS * 60) / every * every; minute <= now; minute += every) {
            int step = now - minute <= 60 ? 1 : 10;
            if (last < 0 || minute / step != last / step) {
                double volume = filling.tank().volume(filling.posted()[minute]);
                samples.add(new Sample(START.plus(Duration.ofMinutes(minute)), volume));
                last = minute;
            }
        }
        return new Series(samples);
    }

    private static SplittableRandom source(long seed, int number) {
        return new SplittableRandom(new SplittableRandom(seed + 0xD1342543DE82EF95L * number).nextLong());
    }

    /** By how much of the actual time the foretold one was off; 1 when none was foretold. */
    double error() {
        return reach.flatMap(Reach::expected)
                .map(foretold -> Math.abs(minutes(foretold) - actual) / actual)
                .orElse(1.0);
    }

    boolean covered() {
        return reach.filter(one -> minutes(one.earliest()) <= actual
                        && one.latest().map(latest -> minutes(latest) >= actual).orElse(true))
                .isPresent();
    }

    /** Whether the lower end was no later than the truth: what people are called by. */
    boolean inTime() {
        return reach.filter(one -> minutes(one.earliest()) <= actual).isPresent();
    }

    /** Of the interval, as a share of the actual time; empty when it has no end. */
    Optional<Double> width() {
        return reach.flatMap(one -> one.latest().map(latest -> (minutes(latest) - minutes(one.earliest())) / actual));
    }

    private static double minutes(Duration length) {
        return length.toSeconds() / 60.0;
    }
}
