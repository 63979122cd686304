package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Outcome;

/** What whoever caused a decision is told. */
public sealed interface Answer {

    /** One result for each report, in the order in which the reports came. */
    record Results(List<Result> results) implements Answer {
        public Results {
            results = List.copyOf(results);
        }
    }

    /**
     * @param alarm id of the alarm; empty when the report was about one that never occurred
     */
    record Result(Outcome outcome, Optional<String> alarm) {}

    /** It was done. */
    record Done() implements Answer {}

    /** The rules forbid it; nothing was changed. The reason is a sentence for a person. */
    record Refusal(String reason) implements Answer {}
}
