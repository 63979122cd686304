package yardlight.demo.bench;

import java.util.Optional;

/**
 * A line of the table.
 *
 * @param figure what was measured, with its unit
 * @param ours the gateway's
 * @param limit what could be reached at best here, and what that is; empty when there is no such thing
 * @param aim what the ratio, or the figure where there is none, should be; empty when nothing was promised
 */
record Row(String figure, double ours, Optional<Limit> limit, String aim) {

    record Limit(String what, double value) {}

    static final String HEAD = "| figure | Yardlight | limit | ratio | aim |\n| --- | ---: | --- | ---: | --- |";

    static Row of(String figure, double ours) {
        return new Row(figure, ours, Optional.empty(), "");
    }

    static Row of(String figure, double ours, String what, double limit) {
        return new Row(figure, ours, Optional.of(new Limit(what, limit)), "");
    }

    /** The same with what it should be. */
    Row aim(String wanted) {
        return new Row(figure, ours, limit, wanted);
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
        String wanted = aim.isEmpty() ? "–" : aim;
        return "| " + figure + " | " + Figures.written(ours) + " | " + best + " | " + ratio + " | " + wanted + " |";
    }
}
