package yardlight.gateway.strip;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import yardlight.db.reading.Sample;

/** Cuts a curve where nothing was read: a line over a gap would say something that nobody knows. */
public final class Runs {

    /** So many times the usual distance is a gap. */
    private static final int MUCH = 4;

    private Runs() {}

    public static List<List<Sample>> of(List<Sample> samples) {
        var runs = new ArrayList<List<Sample>>();
        if (samples.isEmpty()) {
            return runs;
        }
        Duration most = usual(samples).multipliedBy(MUCH);
        int start = 0;
        for (int i = 1; i < samples.size(); i++) {
            if (distance(samples, i).compareTo(most) > 0) {
                runs.add(samples.subList(start, i));
                start = i;
            }
        }
        runs.add(samples.subList(start, samples.size()));
        return runs;
    }

    /** The median: gaps do not move it. */
    private static Duration usual(List<Sample> samples) {
        List<Duration> distances = new ArrayList<>();
        for (int i = 1; i < samples.size(); i++) {
            distances.add(distance(samples, i));
        }
        distances.sort(null);
        return distances.isEmpty() ? Duration.ofDays(1) : distances.get(distances.size() / 2);
    }

    private static Duration distance(List<Sample> samples, int i) {
        return Duration.between(samples.get(i - 1).at(), samples.get(i).at());
    }
}
