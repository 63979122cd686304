package yardlight.escalation.swap;

import static yardlight.escalation.swap.OfferState.DECLINED;
import static yardlight.escalation.swap.OfferState.EXPIRED;
import static yardlight.escalation.swap.OfferState.LAPSED;
import static yardlight.escalation.swap.OfferState.OPEN;
import static yardlight.escalation.swap.OfferState.TAKEN;
import static yardlight.escalation.swap.OfferState.WITHDRAWN;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The whole life of an offer as a table: from, trigger, guard, to. The first row that fits decides; no row means that nothing
 * comes of it. What was taken stays taken: its end is another edit of the roster.
 */
final class OfferTransitions {

    /**
     * What a guard may look at.
     *
     * @param expired whether its time is up
     * @param refusedByAll whether everybody who was asked has said no, this one included
     */
    record Facts(boolean expired, boolean refusedByAll) {}

    record Row(OfferState from, OfferTrigger trigger, Guard guard, OfferState to) {}

    enum Guard {
        ALWAYS(facts -> true),
        IN_TIME(facts -> !facts.expired()),
        EXPIRED(Facts::expired),
        LAST_NO(Facts::refusedByAll);

        private final Predicate<Facts> test;

        Guard(Predicate<Facts> test) {
            this.test = test;
        }
    }

    static final List<Row> TABLE = List.of(
            new Row(OPEN, OfferTrigger.TAKE, Guard.IN_TIME, TAKEN),
            new Row(OPEN, OfferTrigger.DECLINE, Guard.LAST_NO, DECLINED),
            new Row(OPEN, OfferTrigger.DECLINE, Guard.ALWAYS, OPEN),
            new Row(OPEN, OfferTrigger.WITHDRAW, Guard.ALWAYS, WITHDRAWN),
            new Row(OPEN, OfferTrigger.LAPSE, Guard.ALWAYS, LAPSED),
            new Row(OPEN, OfferTrigger.TIME, Guard.EXPIRED, EXPIRED),
            // The last one who said no thinks again.
            new Row(DECLINED, OfferTrigger.TAKE, Guard.IN_TIME, TAKEN),
            new Row(DECLINED, OfferTrigger.TIME, Guard.EXPIRED, EXPIRED),
            new Row(DECLINED, OfferTrigger.WITHDRAW, Guard.ALWAYS, WITHDRAWN),
            new Row(DECLINED, OfferTrigger.LAPSE, Guard.ALWAYS, LAPSED));

    private OfferTransitions() {}

    /** The state after the trigger, or empty when nothing comes of it. */
    static Optional<OfferState> next(OfferState from, OfferTrigger trigger, Facts facts) {
        return TABLE.stream()
                .filter(row -> row.from == from && row.trigger == trigger && row.guard.test.test(facts))
                .map(Row::to)
                .findFirst();
    }
}
