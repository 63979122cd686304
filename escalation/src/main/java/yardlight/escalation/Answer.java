package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.swap.Offer;

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
     * @param note what else there is to say to the box
     */
    record Result(Outcome outcome, Optional<String> alarm, Optional<String> note) {

        public Result(Outcome outcome, Optional<String> alarm) {
            this(outcome, alarm, Optional.empty());
        }

        Result noting(Optional<String> words) {
            return new Result(outcome, alarm, words);
        }
    }

    /** It was done. */
    record Done() implements Answer {}

    /**
     * It was done, and it answered the tests of these lines.
     *
     * @param tests places of the lines in the contact's list, from 0 on
     */
    record Tested(List<Integer> tests) implements Answer {
        public Tested {
            tests = List.copyOf(tests);
        }
    }

    /**
     * The site is asked to shut in.
     *
     * @param joined whether it had been asked before, and this adds nothing
     */
    record Asked(Request request, boolean joined) implements Answer {}

    /**
     * The others are asked, or have been; or one of them has answered.
     *
     * @param offer as it stands now
     * @param again whether it stood like this before, and nothing was changed
     */
    record Swapped(Offer offer, boolean again) implements Answer {}

    /** A request that is to go to the site now: to the box with the answer to its heartbeat, or to the relay. */
    record Offered(Request request) implements Answer {}

    /** The rules forbid it; nothing was changed. */
    record Refusal(Sentence why) implements Answer {

        /** With a reason in English only. */
        public Refusal(String reason) {
            this(Sentence.plain(reason));
        }

        /** The reason, in English. */
        public String reason() {
            return why.english();
        }
    }
}
