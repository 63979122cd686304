package yardlight.demo.night;

import java.util.List;

/**
 * How a night went.
 *
 * @param summary all of it in one line
 * @param reasons why it did not go as written; empty when it did
 */
public record Outcome(String summary, List<String> reasons) {

    public Outcome {
        reasons = List.copyOf(reasons);
    }

    public boolean asWritten() {
        return reasons.isEmpty();
    }
}
