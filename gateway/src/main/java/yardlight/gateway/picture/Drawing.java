package yardlight.gateway.picture;

import java.time.Instant;
import java.util.List;
import yardlight.db.reading.Sample;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.strip.Axis;
import yardlight.gateway.strip.Limit;
import yardlight.gateway.strip.RoundTimes;
import yardlight.gateway.strip.Runs;
import yardlight.gateway.strip.Stretch;

/** One curve on ruled paper, with its limits and the moment at which its alarm began. */
record Drawing(Stretch stretch, List<Sample> samples, List<Limit> limits, Instant began, Clockface clock, Axis axis) {

    private static final int WIDTH = 600;
    private static final int HEIGHT = 300;
    private static final int LEFT = 64;
    private static final int RIGHT = WIDTH - 16;
    private static final int TOP = 16;
    private static final int BOTTOM = HEIGHT - 36;
    private static final int FIGURES = 6;
    private static final int TIMES = 6;
    private static final double SIZE = 13;

    private static final int PAPER = 0xfbf9f3;
    private static final int RULE = 0xd5ccba;
    private static final int BAND = 0xdfe0dc;
    private static final int PENCIL = 0x566067;
    private static final int INK = 0x20282d;
    private static final int ALARM = 0xa3281c;

    static Drawing of(Stretch stretch, List<Sample> samples, List<Limit> limits, Instant began, Clockface clock) {
        return new Drawing(stretch, samples, limits, began, clock, Axis.around(samples, limits, FIGURES));
    }

    byte[] png() {
        var canvas = new Canvas(WIDTH, HEIGHT, PAPER);
        Runs.of(samples).forEach(run -> band(canvas, run));
        rules(canvas);
        limits.forEach(limit -> limit(canvas, limit));
        began(canvas);
        Runs.of(samples).forEach(run -> line(canvas, run));
        return Png.of(canvas);
    }

    private void rules(Canvas canvas) {
        for (double value : axis.marks()) {
            double y = down(value);
            canvas.box(LEFT, y, RIGHT, y + 1, RULE);
            String words = axis.words(value);
            Strokes.write(canvas, words, LEFT - 8 - Strokes.width(words, SIZE), y - SIZE / 2, SIZE, INK);
        }
        for (Instant at : RoundTimes.between(stretch.from(), stretch.to(), clock.zone(), TIMES)) {
            double x = along(at);
            canvas.box(x, TOP, x + 1, BOTTOM, RULE);
            String words = clock.time(at);
            double left = x - Strokes.width(words, SIZE) / 2;
            if (left > 2 && left + Strokes.width(words, SIZE) < WIDTH - 2) {
                Strokes.write(canvas, words, left, BOTTOM + 12, SIZE, INK);
            }
        }
    }

    /** A line with teeth on the side where the trouble lies, and its figure at the right. */
    private void limit(Canvas canvas, Limit limit) {
        if (axis.up(limit.value()) < 0 || axis.up(limit.value()) > 1) {
            return;
        }
        double y = down(limit.value());
        double tip = limit.above() ? y - 6 : y + 6;
        canvas.line(LEFT, y, RIGHT, y, 1.4, PENCIL);
        for (int x = LEFT + 10; x < RIGHT - 6; x += 24) {
            canvas.line(x, y, x + 6, tip, 1.2, PENCIL);
        }
    }

    /** A red line down to the curve, with a flag, so that it is not told by the colour alone. */
    private void began(Canvas canvas) {
        if (stretch.along(began) < 0 || stretch.along(began) > 1) {
            return;
        }
        double x = along(began);
        canvas.line(x, TOP - 8, x, BOTTOM, 2, ALARM);
        for (int y = 0; y < 10; y++) {
            canvas.line(x, TOP - 8 + y, x - 10 + Math.abs(5 - y) * 2, TOP - 8 + y, 1, ALARM);
        }
    }

    private void band(Canvas canvas, List<Sample> run) {
        for (int i = 1; i < run.size(); i++) {
            Sample sample = run.get(i);
            if (sample.max() > sample.min()) {
                canvas.box(
                        along(run.get(i - 1).at()), down(sample.max()), along(sample.at()), down(sample.min()), BAND);
            }
        }
    }

    private void line(Canvas canvas, List<Sample> run) {
        Sample last = run.get(0);
        for (Sample sample : run) {
            canvas.line(along(last.at()), down(last.mean()), along(sample.at()), down(sample.mean()), 2.4, INK);
            last = sample;
        }
    }

    private double along(Instant at) {
        return LEFT + stretch.along(at) * (RIGHT - LEFT);
    }

    private double down(double value) {
        return BOTTOM - axis.up(value) * (BOTTOM - TOP);
    }
}
