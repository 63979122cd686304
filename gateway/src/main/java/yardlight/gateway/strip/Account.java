package yardlight.gateway.strip;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.db.reading.Sample;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/** A curve in words and as a table, for whoever does not see it. */
public record Account(String name, String unit, List<Sample> samples, Clockface clock, Tongue tongue) {

    /** One line of the table. */
    public record Row(String time, String mean, String low, String high) {}

    private static final int MOST_ROWS = 32;

    public Account {
        samples = List.copyOf(samples);
    }

    /** {@code WATER TANK: last 18.4 ft, 2:13 AM; lowest 14.1 ft, 1:13 AM; highest 18.6 ft, 2:05 AM.} */
    public String sentence() {
        if (samples.isEmpty()) {
            return tongue.say("strip.nothing", name);
        }
        Sample last = samples.get(samples.size() - 1);
        Sample lowest = samples.stream().min(Comparator.comparing(Sample::min)).orElse(last);
        Sample highest = samples.stream().max(Comparator.comparing(Sample::max)).orElse(last);
        return tongue.say(
                "strip.sentence",
                name,
                Rounded.of(last.mean(), unit),
                clock.read(last.at()),
                Rounded.of(lowest.min(), unit),
                clock.read(lowest.at()),
                Rounded.of(highest.max(), unit),
                clock.read(highest.at()));
    }

    /** {@code 18.4 ft}; empty when nothing was read. */
    public Optional<String> last() {
        return samples.isEmpty()
                ? Optional.empty()
                : Optional.of(Rounded.of(samples.get(samples.size() - 1).mean(), unit));
    }

    /** Mean, lowest and highest of round stretches of time, newest first. */
    public List<Row> rows() {
        if (samples.isEmpty()) {
            return List.of();
        }
        var groups = new TreeMap<Instant, List<Sample>>(Comparator.reverseOrder());
        List<Instant> starts = starts();
        int next = 0;
        for (Sample sample : samples) {
            while (next + 1 < starts.size() && !sample.at().isBefore(starts.get(next + 1))) {
                next++;
            }
            groups.computeIfAbsent(starts.get(next), none -> new ArrayList<>()).add(sample);
        }
        return groups.entrySet().stream().map(this::row).toList();
    }

    private List<Instant> starts() {
        Instant from = samples.get(0).at();
        Instant to = samples.get(samples.size() - 1).at();
        ZoneId zone = clock.zone();
        var starts = new ArrayList<Instant>(RoundTimes.between(from, to, zone, MOST_ROWS));
        if (starts.isEmpty() || from.isBefore(starts.get(0))) {
            starts.add(0, from);
        }
        return starts;
    }

    private Row row(Map.Entry<Instant, List<Sample>> group) {
        List<Sample> of = group.getValue();
        return new Row(
                clock.read(group.getKey()),
                Rounded.of(of.stream().mapToDouble(Sample::mean).average().orElse(0)),
                Rounded.of(of.stream().mapToDouble(Sample::min).min().orElse(0)),
                Rounded.of(of.stream().mapToDouble(Sample::max).max().orElse(0)));
    }
}
