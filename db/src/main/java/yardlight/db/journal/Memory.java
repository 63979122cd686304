package yardlight.db.journal;

import java.util.Optional;
import yardlight.escalation.setup.Setup;

/**
 * What the writer remembers from one transaction to the next, so that a gateway on its own reads nearly nothing. It holds
 * only while nobody else writes: each transaction has a number, and the one that was remembered must be the last.
 *
 * <p>Rows that retention deletes are years old and over; that they may still be remembered does no harm.
 */
final class Memory {

    /**
     * When there is more than this it starts afresh, so that a long life does not fill the heap: a sixteenth of it, at about
     * two kilobytes for each alarm, callout or notice.
     */
    private static final long MOST =
            Math.min(100_000, Math.max(2_000, Runtime.getRuntime().maxMemory() / 32_768));

    private record Last(long turn, Slice slice) {}

    private Optional<Last> last = Optional.empty();

    /**
     * The slice of the transaction before this one, or an empty one. It is handed out once: a transaction that comes to
     * nothing leaves nothing behind.
     */
    Slice take(long turn, Reads reads, Setup setup) {
        Optional<Slice> fitting = last.filter(one -> one.turn() == turn - 1).map(Last::slice);
        last = Optional.empty();
        fitting.ifPresent(slice -> slice.picture.setup(setup));
        return fitting.orElseGet(() -> new Slice(reads, setup));
    }

    /** The transaction was stored. */
    void keep(long turn, Slice slice) {
        last = Optional.of(new Last(turn, slice.kept.size() <= MOST ? slice : slice.afresh()));
    }

    /** The connection is gone, and nobody knows what became of the last transaction. */
    void forget() {
        last = Optional.empty();
    }
}
