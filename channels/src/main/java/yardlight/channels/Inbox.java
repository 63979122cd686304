package yardlight.channels;

/**
 * Where a channel brings what comes in from outside. May be used by any number of threads at once.
 *
 * <p>A channel tells the carrier that it has something only after this took it: what a gateway loses in a crash the carrier
 * then brings again. So the same thing may come twice, and is known by its identity.
 */
public interface Inbox {

    /**
     * Blocks until it is kept for good.
     *
     * @return whether it is; if not, the carrier is asked to bring it again later
     */
    boolean take(Incoming text);

    /**
     * Blocks until it is kept for good.
     *
     * @return whether it is; if not, the carrier is asked to bring it again later
     */
    boolean take(Receipt receipt);
}
