package yardlight.channels.mailbox;

import java.util.Optional;

/** Which lines there are. Asked for each mail of a person, by any thread. */
public interface KnownLines {

    /**
     * A line that answers may come from.
     *
     * @param channel {@code mail} or {@code sms-mail}
     * @param address as the line has it: answers to it go there, whatever the mail says of itself
     */
    record Known(String channel, String address) {}

    /** @param from in small letters. Empty when no line has that address */
    Optional<Known> from(String from);
}
