package yardlight.gateway.browser;

import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.util.GreenMailUtil;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.gateway.WholeGateway;

/** The test mail server, as the phone that gets its texts. */
final class Carrier {

    private static final Pattern LINK = Pattern.compile("/a/[A-Za-z0-9_-]{22}");

    private Carrier() {}

    /** The path of the link in the first text to this address in which the word is; waits for it. */
    static String link(String address, String word) {
        String text = await().atMost(Duration.ofSeconds(20))
                .until(() -> texts(address, word), found -> !found.isEmpty())
                .get(0);
        Matcher link = LINK.matcher(text);
        if (!link.find()) {
            throw new AssertionError("no link in: " + text);
        }
        return link.group();
    }

    private static List<String> texts(String address, String word) {
        return Arrays.stream(WholeGateway.CARRIER.getReceivedMessages())
                .filter(mail -> to(mail).equals(address))
                .map(GreenMailUtil::getBody)
                .filter(text -> text.contains(word))
                .toList();
    }

    private static String to(MimeMessage mail) {
        try {
            return mail.getAllRecipients()[0].toString();
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }
}
