package yardlight.channels;

import java.time.Instant;
import java.util.regex.Pattern;

/**
 * What is to be brought to one address.
 *
 * @param id the notice's id, 1 to 300 printable ASCII characters; the same id is the same message, however often it is sent
 * @param address whatever the channel takes for an address; may be nonsense, the channel then refuses it
 * @param text as the person is to read it
 * @param at when it was written: the date that it carries
 */
public record Message(String id, String address, String text, Instant at) {

    private static final Pattern ID = Pattern.compile("[!-~]{1,300}");

    public Message {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("message id must be 1 to 300 printable ASCII characters: " + id);
        }
        if (address == null || text == null || at == null) {
            throw new IllegalArgumentException("message must have an address, a text and a time: " + id);
        }
    }
}
