package yardlight.demo.phone;

import java.net.URI;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.demo.cast.Person;

/**
 * A message that reached a person.
 *
 * @param number counts all messages from 1
 * @param path whether it came to the phone or to the mail box
 * @param at the gateway's time at which the carrier took it
 * @param messageId of the mail that carried it; one message that arrives twice shows the same one
 */
public record Text(int number, Person person, Path path, Instant at, String body, String messageId) {

    /** Where a message ends up. */
    public enum Path {
        PHONE,
        MAIL
    }

    private static final Pattern ADDRESS = Pattern.compile("https?://[^\\s<>\"]+");
    private static final String SENTENCE_ENDS = ".,;:!?)";

    /** The first web address in it, without the punctuation of the sentence around it. */
    public Optional<URI> link() {
        return link(body);
    }

    static Optional<URI> link(String body) {
        Matcher found = ADDRESS.matcher(body);
        if (!found.find()) {
            return Optional.empty();
        }
        String address = found.group();
        while (SENTENCE_ENDS.indexOf(address.charAt(address.length() - 1)) >= 0) {
            address = address.substring(0, address.length() - 1);
        }
        return Optional.of(URI.create(address));
    }

    /** Whether somebody is called by it: other texts only say what became of something. */
    public boolean calls() {
        return !mentions("has it since") && !mentions("back to normal");
    }

    /** Whether it is this that it calls for, and not what it says after that. */
    public boolean callsFor(String words) {
        String upper = body.toUpperCase(Locale.ROOT);
        int also = upper.indexOf("ALSO: ");
        return (also < 0 ? upper : upper.substring(0, also)).contains(words.toUpperCase(Locale.ROOT));
    }

    /** Whether it speaks of this, in whatever letter case. */
    public boolean mentions(String words) {
        return body.toUpperCase(Locale.ROOT).contains(words.toUpperCase(Locale.ROOT));
    }
}
