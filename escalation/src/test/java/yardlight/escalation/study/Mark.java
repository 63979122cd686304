package yardlight.escalation.study;

import java.util.Optional;
import yardlight.escalation.heartbeat.Verdict;

/**
 * How one set of rules did in one outage.
 *
 * @param truth of what the first text named; of everything that happened when there was none
 * @param evidence at the first text
 * @param first what the first text said; empty when the outage was over before anybody was told
 * @param last what the record says in the end
 * @param lastTruth of what that is about
 * @param reboot whether the record says that the box may have started by itself
 * @param texts to the first contact
 * @param delay from the beginning to the first text, in ms
 * @param falseAlarms texts about boxes that nothing had happened to
 */
record Mark(
        Truth truth,
        Evidence evidence,
        Optional<Verdict> first,
        Verdict last,
        Truth lastTruth,
        boolean reboot,
        int texts,
        long delay,
        int falseAlarms) {

    boolean noticed() {
        return first.isPresent();
    }

    boolean firstRight() {
        return first.filter(truth.right::contains).isPresent();
    }

    boolean firstWrong() {
        return first.filter(truth::wrong).isPresent();
    }

    /** Whether the truth is one that evidence can tell, and there was some. */
    boolean decided() {
        return noticed() && truth != Truth.BOX && evidence != Evidence.NONE;
    }

    boolean lastRight() {
        return lastTruth.right.contains(last);
    }

    /** The same, where "power off, or the box has started by itself" counts as right of a box that crashed. */
    boolean lastRightOrReboot() {
        return lastRight() || lastTruth == Truth.BOX && reboot;
    }
}
