package yardlight.db.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A day of UTC of one series, as it is packed into one row: each reading as it came, or summed up in steps of a fixed length. A
 * day never goes back from sums to readings.
 */
public final class PackedDay {

    /** What is newer than this is not packed. */
    public static final Duration NEVER = Duration.ofHours(1);

    private static final int FORM = 1;

    /** Digits that the mean of a step has beyond those of its readings. */
    private static final int MEAN_DIGITS = 2;

    private final Duration step;
    private final TreeMap<Instant, Sample> samples;

    private PackedDay(Duration step, TreeMap<Instant, Sample> samples) {
        this.step = step;
        this.samples = samples;
    }

    static PackedDay empty() {
        return new PackedDay(Duration.ZERO, new TreeMap<>());
    }

    /** Whether it holds sums and no single readings any more. */
    public boolean summed() {
        return !step.isZero();
    }

    Collection<Sample> samples() {
        return samples.values();
    }

    /**
     * Whether a reading of this time is news to it. A step that has been summed up is closed: nobody could say any more whether
     * the reading is in it already.
     */
    public boolean takes(Instant at) {
        return !samples.containsKey(place(at));
    }

    private Instant place(Instant at) {
        return summed() ? start(at, step) : at;
    }

    private static Instant start(Instant at, Duration step) {
        long length = step.toMillis();
        return Instant.ofEpochMilli(Math.floorDiv(at.toEpochMilli(), length) * length);
    }

    /** The same with late readings, as far as it takes them. */
    PackedDay with(Collection<Sample> readings) {
        var more = new TreeMap<>(samples);
        List<Sample> news =
                readings.stream().filter(reading -> takes(reading.at())).toList();
        if (summed()) {
            sums(news, step).forEach(sum -> more.put(sum.at(), sum));
        } else {
            news.forEach(reading -> more.putIfAbsent(reading.at(), reading));
        }
        return new PackedDay(step, more);
    }

    /** Summed up; a day that is already stays as it is. */
    PackedDay summed(Duration by) {
        if (summed()) {
            return this;
        }
        var sums = new TreeMap<Instant, Sample>();
        sums(samples.values(), by).forEach(sum -> sums.put(sum.at(), sum));
        return new PackedDay(by, sums);
    }

    private static List<Sample> sums(Collection<Sample> readings, Duration step) {
        Map<Instant, List<Sample>> steps = new TreeMap<>();
        readings.forEach(reading -> steps.computeIfAbsent(start(reading.at(), step), at -> new ArrayList<>())
                .add(reading));
        int decimals =
                Columns.decimalsOf(readings.stream().mapToDouble(Sample::mean).toArray());
        return steps.entrySet().stream()
                .map(entry -> Sample.of(entry.getKey(), entry.getValue()))
                .map(sum -> sum.withMean(rounded(sum.mean(), decimals + MEAN_DIGITS)))
                .toList();
    }

    private static double rounded(double mean, int decimals) {
        double scale = Math.pow(10, Math.min(decimals, Columns.MOST_DECIMALS));
        double whole = Math.rint(mean * scale);
        return decimals >= Columns.BITS || Math.abs(whole) > 1e15 ? mean : whole / scale + 0.0;
    }

    byte[] bytes() {
        List<Sample> all = List.copyOf(samples.values());
        var columns = new Columns()
                .number(FORM)
                .number(step.toMillis())
                .number(all.size())
                .steady(all.stream().mapToLong(one -> one.at().toEpochMilli()).toArray());
        if (!summed()) {
            return columns.decimals(values(all)).packed();
        }
        return columns.near(all.stream().mapToLong(Sample::count).toArray())
                .decimals(all.stream().mapToDouble(Sample::min).toArray())
                .decimals(all.stream().mapToDouble(Sample::max).toArray())
                .decimals(values(all))
                .packed();
    }

    private static double[] values(List<Sample> all) {
        return all.stream().mapToDouble(Sample::mean).toArray();
    }

    /** @throws IllegalStateException when these are not the bytes of a day */
    public static PackedDay read(byte[] bytes) {
        var columns = new ColumnsReader(bytes);
        long form = columns.number();
        if (form != FORM) {
            throw new IllegalStateException("a packed day must be of form " + FORM + ": " + form);
        }
        Duration step = Duration.ofMillis(columns.number());
        int count = (int) columns.number();
        long[] at = columns.steady(count);
        var samples = new TreeMap<Instant, Sample>();
        if (step.isZero()) {
            double[] values = columns.decimals(count);
            for (int i = 0; i < count; i++) {
                samples.put(Instant.ofEpochMilli(at[i]), Sample.one(Instant.ofEpochMilli(at[i]), values[i]));
            }
            return new PackedDay(step, samples);
        }
        long[] counts = columns.near(count);
        double[] min = columns.decimals(count);
        double[] max = columns.decimals(count);
        double[] mean = columns.decimals(count);
        for (int i = 0; i < count; i++) {
            Instant start = Instant.ofEpochMilli(at[i]);
            samples.put(start, new Sample(start, min[i], max[i], mean[i], (int) counts[i]));
        }
        return new PackedDay(step, samples);
    }
}
