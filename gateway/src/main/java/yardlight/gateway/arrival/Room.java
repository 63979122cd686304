package yardlight.gateway.arrival;

import java.util.concurrent.atomic.AtomicLong;

/** The bytes that all bodies together may take up. */
final class Room {

    private final long most;
    private final AtomicLong taken = new AtomicLong();

    /**
     * @param most bytes
     */
    Room(long most) {
        this.most = most;
    }

    /** Takes so many bytes, or none and says no. */
    boolean take(int bytes) {
        if (taken.addAndGet(bytes) <= most) {
            return true;
        }
        taken.addAndGet(-bytes);
        return false;
    }

    void giveBack(long bytes) {
        taken.addAndGet(-bytes);
    }

    long taken() {
        return taken.get();
    }
}
