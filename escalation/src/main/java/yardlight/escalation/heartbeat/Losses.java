package yardlight.escalation.heartbeat;

/**
 * How many heartbeats get lost, and how many in a row; the older a count the less it weighs, so that about the last
 * {@value #WINDOW} heartbeats count.
 *
 * @param heard heartbeats that came
 * @param lost heartbeats that did not
 * @param runs how often some were lost between two that came
 */
public record Losses(double heard, double lost, double runs) {

    static final Losses NONE = new Losses(0, 0, 0);

    /** As many as the window of the phi accrual paper has. */
    private static final int WINDOW = 1_000;

    /** Losses are taken to be independent of each other until about so many show that they are not. */
    private static final int INDEPENDENT = 5;

    private static final double KEPT = 1 - 1.0 / WINDOW;

    public Losses {
        if (!(heard >= 0 && lost >= 0 && runs >= 0)) {
            throw new IllegalArgumentException("losses must be counts: " + heard + " " + lost + " " + runs);
        }
    }

    /** A heartbeat came after so many that did not. */
    Losses next(int missed) {
        return new Losses(heard * KEPT + 1, lost * KEPT + missed, runs * KEPT + (missed > 0 ? 1 : 0));
    }

    /** The fewest misses in a row, but no more than {@code most}, that are no likelier than {@code chance}. */
    int unlikely(double chance, int most) {
        var row = new Row();
        while (row.chance > chance && row.misses < most) {
            row.miss();
        }
        return row.misses;
    }

    /** The chance that as many as that get lost between two that come. */
    double chance(int misses) {
        var row = new Row();
        while (row.misses < misses) {
            row.miss();
        }
        return row.chance;
    }

    /**
     * A row of misses that grows. Each chance is the mean of what it may be by what was seen (beta distribution): that of the
     * first by how often a row began (with Jeffreys' prior, a half of each), that of another by how often one went on, which
     * is believed to be the share that gets lost until enough rows were seen. Each miss is evidence for those after it.
     */
    private final class Row {

        private int misses;
        private double chance = 1;
        private double on;
        private final double all;

        Row() {
            double sure = Math.max(1, Math.min(INDEPENDENT, lost + heard));
            on = Math.max(0, lost - runs) + sure * (lost + 1.5) / (lost + heard + 2);
            all = Math.max(lost, runs) + sure;
        }

        void miss() {
            if (misses == 0) {
                chance = (runs + 0.5) / (heard + 1);
            } else {
                chance *= on / (all + misses - 1);
                on++;
            }
            misses++;
        }
    }
}
