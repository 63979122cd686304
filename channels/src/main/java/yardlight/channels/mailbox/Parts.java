package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimePart;
import java.util.ArrayList;
import java.util.List;

/** Takes a mail apart, as far as a mail of a person or of a mail server goes; a mail within it is left whole. */
final class Parts {

    private static final int DEEPEST = 12;
    private static final int MOST = 100;

    private Parts() {}

    /** In their order. */
    static List<Leaf> of(MimePart mail) throws MessagingException {
        var found = new ArrayList<Leaf>();
        walk(mail, 0, found);
        return found;
    }

    private static void walk(MimePart part, int depth, List<Leaf> found) throws MessagingException {
        if (found.size() >= MOST) {
            return;
        }
        if (depth >= DEEPEST || !Leaf.typeOf(part).match("multipart/*")) {
            found.add(Leaf.of(part));
            return;
        }
        var parts = new MimeMultipart(part.getDataHandler().getDataSource());
        for (int i = 0; i < Math.min(parts.getCount(), MOST); i++) {
            if (parts.getBodyPart(i) instanceof MimePart inner) {
                walk(inner, depth + 1, found);
            }
        }
    }
}
