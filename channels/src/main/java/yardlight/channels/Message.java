package yardlight.channels;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What is to be brought to one address.
 *
 * @param id the notice's id, 1 to 300 printable ASCII characters; the same id is the same message, however often it is sent
 * @param address whatever the channel takes for an address; may be nonsense, the channel then refuses it
 * @param text as the person is to read it
 * @param at when it was written: the date that it carries
 * @param answers what the channel called the text that this answers ({@link Incoming#id()}); empty if it answers none
 * @param attachment what goes along where the channel can carry it
 */
public record Message(
        String id, String address, String text, Instant at, Optional<String> answers, Optional<Attachment> attachment) {

    private static final Pattern ID = Pattern.compile("[!-~]{1,300}");

    /** One that answers nothing. */
    public Message(String id, String address, String text, Instant at) {
        this(id, address, text, at, Optional.empty());
    }

    /** One with nothing attached. */
    public Message(String id, String address, String text, Instant at, Optional<String> answers) {
        this(id, address, text, at, answers, Optional.empty());
    }

    public Message {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("message id must be 1 to 300 printable ASCII characters: " + id);
        }
        if (address == null || text == null || at == null || answers == null || attachment == null) {
            throw new IllegalArgumentException("message must have an address, a text and a time: " + id);
        }
    }
}
