package yardlight.channels;

/** What hears from outside: a channel that answers can come back by, or a mailbox. Trouble outside is never an exception. */
public interface Receiver extends AutoCloseable {

    /** The channel whose answers it hears, such as {@code smpp}. */
    String name();

    /** From now on brings to the inbox whatever comes in; called once. Comes back at once, whether or not the outside can be reached. */
    void listen(Inbox inbox);

    /** Whether it is set up, and whether it hears at present. Asks nobody outside. */
    Health health();

    /** Hears nothing more. What the inbox has not taken by then stays with the carrier. */
    @Override
    void close();
}
