package yardlight.escalation.reply;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.swap.SwapDay;

/** What somebody asks for. */
public sealed interface Said {

    /**
     * I have it.
     *
     * @param codes the calls it was said of; none when it was not said, so that it can only be the one that waits
     */
    record Ok(List<Integer> codes) implements Said {
        public Ok {
            codes = List.copyOf(codes);
        }
    }

    /** I have everything that waits for me. */
    record All() implements Said {}

    /**
     * Not now: put this away for a while.
     *
     * @param code the call, if it was said
     * @param length for how long, if it was said; above zero
     */
    record Hold(Optional<Integer> code, Optional<Duration> length) implements Said {}

    /**
     * Ask the site to shut in.
     *
     * @param number of a call; or the six digits that were sent to make sure
     */
    record ShutIn(int number) implements Said {}

    /**
     * Ask the others whether they take a turn of mine.
     *
     * @param day which one; empty when it was not said, or is none that we know
     */
    record Swap(Optional<SwapDay> day) implements Said {}

    /** I do not take the turn that I was asked to take; or nobody needs to take mine any more. */
    record No(int code) implements Said {}

    /** What is going on? */
    record Status() implements Said {}

    /** Who is on? */
    record Who() implements Said {}

    /** What can I say? */
    record Help() implements Said {}

    /** Send nothing more to this line. */
    record Stop() implements Said {}

    /** Send everything to this line again. */
    record Start() implements Said {}

    /** A machine wrote it: it says nothing, and an answer would only go round in circles. */
    record Automatic() implements Said {}

    /** A person wrote it, and should be asked back. */
    record Unclear() implements Said {}
}
