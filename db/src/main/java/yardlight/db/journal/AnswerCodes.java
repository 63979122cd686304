package yardlight.db.journal;

import java.util.BitSet;
import java.util.Collection;
import yardlight.escalation.ladder.Callout;

/**
 * The codes that people answer with. They go round from 10 to 999, so that one comes back only after all others, and
 * leave out what a live callout has. Only when all of those are taken do longer ones come, each longer one once.
 *
 * <p>What is taken is read once and then followed: a gateway on its own asks no more, however many callouts are live.
 */
final class AnswerCodes {

    private static final int FIRST = 10;
    private static final int LAST = 999;
    private static final String TAKEN = "select code from callout where live_site > ''";

    private final BitSet taken = new BitSet();
    private int last;
    private int longest;

    /**
     * @param taken the codes of live callouts
     * @param last the code up to 999 that was given out last
     */
    AnswerCodes(Collection<Integer> taken, int last) {
        taken.forEach(this.taken::set);
        this.last = last;
        this.longest = Math.max(LAST, this.taken.length() - 1);
    }

    static AnswerCodes read(Pen pen, int last) {
        return new AnswerCodes(pen.read(TAKEN, (statement, none) -> {}, row -> row.number("code")), last);
    }

    int next() {
        int code = taken.nextClearBit(last + 1);
        if (code > LAST) {
            code = taken.nextClearBit(FIRST);
        }
        if (code > LAST) {
            code = ++longest;
        } else {
            last = code;
        }
        taken.set(code);
        return code;
    }

    /** The code up to 999 that was given out last. */
    int last() {
        return last;
    }

    /** The callout is stored: its code is taken while it is live, and free again after. */
    void follow(Callout callout) {
        taken.set(callout.facts().code(), callout.live());
    }
}
