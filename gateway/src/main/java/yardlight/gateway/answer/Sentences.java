package yardlight.gateway.answer;

import java.util.Collection;
import java.util.List;
import yardlight.escalation.setup.Language;

/** What somebody who sent a text is answered, in one language. Lists are in the order in which they are to be read. */
interface Sentences {

    static Sentences in(Language language) {
        return switch (language) {
            case EN -> new EnglishSentences();
            case ES -> new SpanishSentences();
        };
    }

    String stranger();

    String notUnderstood();

    /** Somebody has written who may be the person or not. */
    String notProven();

    String help();

    String nothingWaits();

    String noSuchNumber(Collection<Integer> codes);

    String severalWait(Collection<Integer> codes);

    String youHaveIt(String name, List<String> alarms);

    /** Somebody was faster. */
    String hasIt(String name, String since);

    String forHowLong(int code);

    String putAway(List<String> alarms, String until);

    /** The rules forbid it; the reason is the engine's, in English. */
    String refused(String reason);

    String status(List<String> waiting, List<String> taken);

    String calledFirst(List<String> names);

    /** The code that has to come back, before a site is asked to shut in. */
    String makeSureToShutIn(String site, int code);

    /** @param joined whether it had been asked before */
    String shutInAsked(String site, boolean joined);

    String wrongCode();

    /** A test got there; the lines are numbers with their channels. */
    String works(Collection<String> lines);

    /**
     * The last thing that goes to a line.
     *
     * @param others whether the contact has lines left that are not stopped
     */
    String stopped(boolean others);

    /** @param waiting how many alarms wait for an answer, whoever was told of them */
    String started(int waiting);

    /** A line was to be taken up again that never was stopped. */
    String notStopped();
}
