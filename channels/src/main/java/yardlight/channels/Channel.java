package yardlight.channels;

import java.util.Optional;

/**
 * One way to reach a person, such as e-mail.
 *
 * <p>May be used by any number of threads at once. Trouble outside, of whatever kind, is a value and never an exception.
 */
public interface Channel extends AutoCloseable {

    /** The word by which a contact's line names this channel, such as {@code sms-mail}. */
    String name();

    /**
     * Hands the message over, or says why not. Blocks, but for a bounded time that the channel's settings say.
     *
     * <p>The same message may be sent again after {@link Attempt.Outcome#DEFERRED} and {@link Attempt.Outcome#UNKNOWN}:
     * it then carries the same identity outside.
     */
    Attempt send(Message message);

    /**
     * Goes as far as one can without a message and looks whether the carrier would take one. Blocks no longer than {@link
     * #send}.
     *
     * @return empty if it would, else why not
     */
    Optional<String> knock();

    /**
     * Whether this channel could ever reach the address: empty if it may, else what is wrong with it in a sentence.
     * Looks at the address only, so that a setup can be checked before it is stored.
     */
    Optional<String> complaintAbout(String address);

    /** Whether the channel is set up, and whether it worked the last time. Asks nobody outside. */
    Health health();

    /** Lets go of everything held open. What is under way is finished, what comes later is deferred. */
    @Override
    void close();
}
