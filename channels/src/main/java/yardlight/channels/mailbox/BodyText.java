package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.util.List;

/** The words of a mail: its plain text, or else its HTML without what only makes it look. */
final class BodyText {

    /** Whoever quotes a whole thread below their answer; further down nothing is their own. */
    private static final int LONGEST = 15_000;

    private BodyText() {}

    static String of(List<Leaf> leaves) throws MessagingException, IOException {
        String plain = first(leaves, "plain");
        return plain.isEmpty() ? first(leaves, "html") : plain;
    }

    private static String first(List<Leaf> leaves, String kind) throws MessagingException, IOException {
        for (Leaf leaf : leaves) {
            if (leaf.is("text", kind) && !leaf.isAttached()) {
                String text = kind.equals("html") ? Html.text(leaf.text()) : unfolded(leaf);
                if (!text.isBlank()) {
                    return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
                }
            }
        }
        return "";
    }

    private static String unfolded(Leaf leaf) throws MessagingException, IOException {
        boolean flowed =
                leaf.parameter("format").filter("flowed"::equalsIgnoreCase).isPresent();
        boolean delete = leaf.parameter("delsp").filter("yes"::equalsIgnoreCase).isPresent();
        return flowed ? joined(leaf.text(), delete) : leaf.text();
    }

    /** RFC 3676 4: a line that ends with a blank goes on in the next one, unless it is a quotation or begins a signature. */
    private static String joined(String text, boolean delete) {
        var all = new StringBuilder();
        for (String line : text.lines().toList()) {
            String bare = line.startsWith(" ") ? line.substring(1) : line;
            boolean goesOn = bare.endsWith(" ") && !bare.equals("-- ") && !bare.startsWith(">");
            all.append(goesOn && delete ? bare.substring(0, bare.length() - 1) : bare);
            if (!goesOn) {
                all.append('\n');
            }
        }
        return all.toString();
    }
}
