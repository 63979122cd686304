package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.util.GreenMailUtil;
import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the mail server of {@link WholeGateway} was given, and the links in it. */
public final class Mails {

    private static final Pattern LINK = Pattern.compile("https?://[a-z0-9.:-]+(/a/[A-Za-z0-9_-]{22})");
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private Mails() {}

    /** The first text to the address that has the word in it, as soon as it is there. */
    public static String textTo(String address, String word) {
        return await().atMost(PATIENCE)
                .until(() -> texts(address, word), found -> !found.isEmpty())
                .get(0);
    }

    /** The path of the link by which the text is answered. */
    public static String link(String text) {
        Matcher matcher = LINK.matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return matcher.group(1);
    }

    private static List<String> texts(String address, String word) {
        return texts(address).stream().filter(text -> text.contains(word)).toList();
    }

    /** All texts to the address, as they were written on the wire. */
    public static List<String> texts(String address) {
        return Arrays.stream(WholeGateway.CARRIER.getReceivedMessages())
                .filter(mail -> to(mail).equals(address))
                .map(GreenMailUtil::getBody)
                .toList();
    }

    private static String to(MimeMessage mail) {
        try {
            return mail.getAllRecipients()[0].toString();
        } catch (jakarta.mail.MessagingException e) {
            throw new IllegalStateException(e);
        }
    }
}
