package yardlight.gateway.arrival;

import java.io.ByteArrayOutputStream;

/**
 * What has arrived of one body. What there is no room for is not kept, but still let come in: a sender that is cut off
 * in the middle does not read why. Not for use by several threads at once.
 */
final class Parcel {

    /** Bytes that each body may take up whatever the others do: an alarm is smaller. */
    static final int FREE = 4096;

    /** What became of it. */
    enum Fate {
        KEPT,
        /** The others take up all the room. */
        NO_ROOM,
        TOO_LARGE
    }

    private final Room room;
    private final long most;
    private ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private Fate fate = Fate.KEPT;
    private long seen;
    private long held;

    /**
     * @param most bytes that any body may have
     */
    Parcel(Room room, long most) {
        this.room = room;
        this.most = most;
    }

    void add(byte[] bytes, int count) {
        long over = Math.max(0, seen + count - Math.max(seen, FREE));
        seen += count;
        if (fate == Fate.KEPT && seen > most) {
            drop(Fate.TOO_LARGE);
        } else if (fate == Fate.KEPT && !room.take((int) over)) {
            drop(Fate.NO_ROOM);
        } else if (fate == Fate.KEPT) {
            held += over;
            kept.write(bytes, 0, count);
        }
    }

    Fate fate() {
        return fate;
    }

    /** How many bytes have come, kept or not. */
    long seen() {
        return seen;
    }

    /** It goes on without end: not worth to be read on. */
    boolean endless() {
        return seen > 2 * most;
    }

    byte[] bytes() {
        return kept.toByteArray();
    }

    /** Nobody needs it any more. */
    void close() {
        room.giveBack(held);
        held = 0;
        kept = new ByteArrayOutputStream(0);
    }

    private void drop(Fate because) {
        fate = because;
        close();
    }
}
