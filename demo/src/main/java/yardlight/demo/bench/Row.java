package yardlight.demo.bench;

import java.util.Optional;

/**
 * A line of the table.
 *
 * @param figure what was measured, with its unit
 * @param ours the gateway's
 * @param limit what could be reached at best here, and what that is; empty when there is no such thing
 */
record Row(String figure, double ours, Optional<Limit> limit) {

    record Limit(String what, double value) {}

    static final String HEAD = "| figure | Yardlight | limit | ratio |\n| --- | ---: | --- | ---: |";

    static Row of(String figure, double ours) {
        return new Row(figure, ours, Optional.empty());
    }

    static Row of(String figure, double ours, String what, double limit) {
        return new Row(figure, ours, Optional.of(new Limit(what, limit)));
    }

    /** Ours divided by the limit. */
    Optional<Double> ratio() {
        return limit.filter(one -> one.value() != 0).map(one -> ours / one.value());
    }

    /** The line in Markdown. */
    @Override
    public String toString() {
        String best = limit.map(one -> one.what() + ": " + Figures.written(one.value()))
                .orElse("–");
        String ratio = ratio().map(Figures::written).orElse("–");
        return "| " + figure + " | " + Figures.written(ours) + " | " + best + " | " + ratio + " |";
    }
}
