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

    private static final long HEAP = Runtime.getRuntime().maxMemory();

    /** A sixteenth of the heap, at about two kilobytes for each alarm, callout or notice. */
    private static final long MOST = Math.min(100_000, Math.max(2_000, HEAP / 32_768));

    /** A twelfth of the heap, at 800 bytes for each box. */
    private static final long MOST_BOXES = HEAP / 12 / 800;

    private record Last(long turn, Slice slice) {}

    private final long most;
    private final long mostBoxes;
    private Optional<Last> last = Optional.empty();

    Memory() {
        this(MOST, MOST_BOXES);
    }

    /**
     * @param most when there is more of what grows with time it starts afresh, so that a long life does not fill the heap; the boxes
     *     stay, for each heartbeat that names a feed asks for all boxes of its site
     * @param mostBoxes when there are more boxes it starts afresh without them
     */
    Memory(long most, long mostBoxes) {
        this.most = most;
        this.mostBoxes = mostBoxes;
    }

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
        boolean boxes = slice.kept.boxes.size() <= mostBoxes;
        boolean all = boxes && slice.kept.size() <= most;
        last = Optional.of(new Last(turn, all ? slice : slice.afresh(boxes)));
    }

    /** The connection is gone, and nobody knows what became of the last transaction. */
    void forget() {
        last = Optional.empty();
    }
}
