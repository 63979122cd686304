package yardlight.escalation.study;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

/** Many outages, played side by side. The same seed gives the same scores, whatever the number of threads. */
record Study(Facts facts, long seed, int outages, int threads) {

    static final List<Rules> RULES = List.of(OurRules.OURS, PlainRules.ALWAYS_POWER, PlainRules.MAJORITY_BY_LINK);

    List<Score> play() {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> IntStream.range(0, outages)
                            .parallel()
                            .mapToObj(number -> Score.of(facts, seed, number, RULES))
                            .toList())
                    .join();
        } finally {
            pool.shutdown();
        }
    }
}
