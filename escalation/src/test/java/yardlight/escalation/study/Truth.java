package yardlight.escalation.study;

import java.util.EnumSet;
import java.util.Set;
import yardlight.escalation.heartbeat.Verdict;

/**
 * What a person should have been told of some boxes: that their mains are off, that their path is lost while they run, or,
 * when neither is so, nothing definite. Where both are true of the boxes that are named, either is right.
 */
enum Truth {
    POWER(Set.of(Verdict.POWER_OFF)),
    COMMS(Set.of(Verdict.COMMS_LOSS)),
    BOTH(EnumSet.of(Verdict.POWER_OFF, Verdict.COMMS_LOSS)),
    /** A box that crashed. Only the open verdict is right. */
    BOX(Set.of(Verdict.SILENT));

    final Set<Verdict> right;

    Truth(Set<Verdict> right) {
        this.right = right;
    }

    /** Of what a text or a record named, by what had happened until then. */
    static Truth of(Outage outage, Set<Integer> boxes, int feed, long until) {
        boolean power = feed != World.NONE && outage.feedsOff()[feed].ever()
                || boxes.stream().anyMatch(box -> power(outage, box, until));
        boolean comms = boxes.stream().anyMatch(box -> comms(outage, box, until));
        if (power) {
            return comms ? BOTH : POWER;
        }
        return comms ? COMMS : BOX;
    }

    private static boolean power(Outage outage, int box, long until) {
        return outage.lostMains(box) && outage.mains(box).from() <= until;
    }

    /** The box ran at a time at which it could not be heard. */
    private static boolean comms(Outage outage, int box, long until) {
        Span dead = outage.dead()[box];
        return ranDuring(outage.radiosDown()[box], dead, until) || ranDuring(outage.linkOf(box), dead, until);
    }

    private static boolean ranDuring(Span lost, Span dead, long until) {
        boolean before = !dead.ever() || lost.from() < dead.from() || dead.to() <= lost.from();
        return lost.ever() && lost.from() <= until && (before || dead.to() < Math.min(until, lost.to()));
    }

    /** A definite verdict that is not the truth. The open one is never wrong. */
    boolean wrong(Verdict verdict) {
        return verdict != Verdict.SILENT && !right.contains(verdict);
    }
}
