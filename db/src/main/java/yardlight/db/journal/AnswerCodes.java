package yardlight.db.journal;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.swap.Offer;

/**
 * The codes that people answer with. They go round from 10 to 999, so that one comes back only after all others, and
 * leave out what a live callout or a turn that was offered has. Only when all of those are taken do longer ones come, each longer one once.
 *
 * <p>What is taken is read once and then followed: a gateway on its own asks no more. Several read it after each other's
 * turns: never more than there are short codes, however many callouts are live.
 */
final class AnswerCodes {

    private static final int FIRST = 10;
    private static final int LAST = 999;
    private static final String TAKEN = "select code from callout where live_site > '' and code <= " + LAST
            + " union all select code from swap where open_in > '' and code <= " + LAST;
    private static final String LONGEST = "select coalesce(max(code), 0) as code from ("
            + "select code from callout where live_site > '' union all select code from swap where open_in > '') as taken";

    private final BitSet taken = new BitSet();
    private int last;
    private int longest;

    /**
     * @param taken the codes up to 999 of live callouts
     * @param longest the highest code of a live callout
     * @param last the code up to 999 that was given out last
     */
    AnswerCodes(Collection<Integer> taken, int longest, int last) {
        taken.forEach(this.taken::set);
        this.longest = Math.max(LAST, longest);
        this.last = last;
    }

    static AnswerCodes read(Pen pen, int last) {
        List<Integer> taken = pen.read(TAKEN, (statement, none) -> {}, row -> row.number("code"));
        int longest = pen.read(LONGEST, (statement, none) -> {}, row -> row.number("code"))
                .get(0);
        return new AnswerCodes(taken, longest, last);
    }

    int next() {
        int code = taken.nextClearBit(last + 1);
        if (code > LAST) {
            code = taken.nextClearBit(FIRST);
        }
        if (code > LAST) {
            return ++longest;
        }
        taken.set(code);
        last = code;
        return code;
    }

    /** The code up to 999 that was given out last. */
    int last() {
        return last;
    }

    /** The callout is stored: its code is taken while it is live, and free again after. */
    void follow(Callout callout) {
        int code = callout.facts().code();
        if (code <= LAST) {
            taken.set(code, callout.live());
        }
    }

    /** The same for a turn that somebody can still take: nobody is to take it who means an alarm, or the other way round. */
    void follow(Offer offer) {
        if (offer.code() <= LAST) {
            taken.set(offer.code(), offer.state().takeable());
        }
    }
}
