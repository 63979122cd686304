package yardlight.escalation.shutin;

import static yardlight.escalation.shutin.RequestState.ASKED;
import static yardlight.escalation.shutin.RequestState.CONFIRMED;
import static yardlight.escalation.shutin.RequestState.EXPIRED;
import static yardlight.escalation.shutin.RequestState.FETCHED;
import static yardlight.escalation.shutin.RequestState.REFUSED;
import static yardlight.escalation.shutin.RequestState.TRYING;
import static yardlight.escalation.shutin.RequestState.UNCERTAIN;
import static yardlight.escalation.shutin.RequestState.UNCONFIRMED;
import static yardlight.escalation.shutin.RequestState.WITHDRAWN;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The whole life of a request as a table: from, trigger, guard, to. The first row that fits decides; no row means that
 * nothing comes of it. Nothing leaves for the site once the request has expired, and what the site says of itself is
 * believed also when it is late.
 */
final class RequestTransitions {

    /** What a guard may look at. */
    record Facts(boolean expired, boolean late) {}

    record Row(RequestState from, RequestTrigger trigger, Guard guard, RequestState to) {}

    enum Guard {
        ALWAYS(facts -> true),
        /** It may still be done. */
        IN_TIME(facts -> !facts.expired()),
        EXPIRED(Facts::expired),
        /** It should have been confirmed. */
        LATE(Facts::late);

        private final Predicate<Facts> test;

        Guard(Predicate<Facts> test) {
            this.test = test;
        }
    }

    static final List<Row> TABLE = table();

    private RequestTransitions() {}

    /** The state after the trigger, or empty when nothing comes of it. */
    static Optional<RequestState> next(RequestState from, RequestTrigger trigger, Facts facts) {
        return TABLE.stream()
                .filter(row -> row.from == from && row.trigger == trigger && row.guard.test.test(facts))
                .map(Row::to)
                .findFirst();
    }

    private static List<Row> table() {
        var rows = new ArrayList<Row>();
        // The box: given once more with every heartbeat, for an answer can get lost.
        rows.add(new Row(ASKED, RequestTrigger.TAKE, Guard.IN_TIME, FETCHED));
        rows.add(new Row(FETCHED, RequestTrigger.TAKE, Guard.IN_TIME, FETCHED));
        // The relay. A try that finds another one without an outcome does not know what became of that one.
        rows.add(new Row(ASKED, RequestTrigger.TRY, Guard.IN_TIME, TRYING));
        rows.add(new Row(TRYING, RequestTrigger.TRY, Guard.IN_TIME, UNCERTAIN));
        rows.add(new Row(UNCERTAIN, RequestTrigger.TRY, Guard.IN_TIME, UNCERTAIN));
        rows.add(new Row(TRYING, RequestTrigger.TAKE, Guard.ALWAYS, FETCHED));
        rows.add(new Row(UNCERTAIN, RequestTrigger.TAKE, Guard.ALWAYS, FETCHED));
        rows.add(new Row(TRYING, RequestTrigger.NOT_TAKEN, Guard.ALWAYS, ASKED));
        rows.add(new Row(TRYING, RequestTrigger.UNKNOWN, Guard.ALWAYS, UNCERTAIN));
        // The ends.
        rows.add(new Row(ASKED, RequestTrigger.TIME, Guard.EXPIRED, EXPIRED));
        for (RequestState sent : EnumSet.of(TRYING, UNCERTAIN, FETCHED)) {
            rows.add(new Row(sent, RequestTrigger.TIME, Guard.LATE, UNCONFIRMED));
        }
        for (RequestState open : EnumSet.range(ASKED, FETCHED)) {
            rows.add(new Row(open, RequestTrigger.WITHDRAW, Guard.ALWAYS, WITHDRAWN));
            rows.add(new Row(open, RequestTrigger.REFUSE, Guard.ALWAYS, REFUSED));
            rows.add(new Row(open, RequestTrigger.CONFIRM, Guard.ALWAYS, CONFIRMED));
        }
        rows.add(new Row(UNCONFIRMED, RequestTrigger.REFUSE, Guard.ALWAYS, REFUSED));
        for (RequestState ended : EnumSet.of(REFUSED, EXPIRED, UNCONFIRMED, WITHDRAWN)) {
            rows.add(new Row(ended, RequestTrigger.CONFIRM, Guard.ALWAYS, CONFIRMED));
        }
        return List.copyOf(rows);
    }
}
