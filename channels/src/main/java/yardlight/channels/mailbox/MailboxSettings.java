package yardlight.channels.mailbox;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;

/**
 * Which mailbox is read, and how.
 *
 * @param host name or IP address
 * @param port 1 to 65535; 993 is usual with {@link Tls#IMPLICIT}, 143 with {@link Tls#STARTTLS}
 * @param certificate SHA-256 of the one certificate that the server must show, as in {@link
 *     yardlight.channels.mail.MailSettings}
 * @param folder usually {@code INBOX}; nobody else should mark anything in it as read
 * @param own our own address, to which people answer: the one that our mails are from
 * @param poll after how long without a word the folder is looked into again, also where the server says by itself that something
 *     has come; 100 ms to 25 minutes (a server may end an IDLE of 30: RFC 2177 3)
 * @param authority the name under which the own mail server says whether a sender is genuine (the authserv-id of RFC 8601);
 *     that server must take out what others put in under its name. Empty: nothing of that kind is believed
 * @param timeouts the whole is for each single step, such as logging in or one mail
 */
public record MailboxSettings(
        String host,
        int port,
        Tls tls,
        Login login,
        Optional<String> certificate,
        String folder,
        String own,
        Duration poll,
        Optional<String> authority,
        Timeouts timeouts) {

    private static final Duration SHORTEST_POLL = Duration.ofMillis(100);
    private static final Duration LONGEST_POLL = Duration.ofMinutes(25);

    public MailboxSettings {
        if (host.isBlank() || host.chars().anyMatch(c -> c <= ' ' || c > '~')) {
            throw new IllegalArgumentException("host must be a name or an IP address: " + host);
        }
        if (port < 1 || port > 65_535) {
            throw new IllegalArgumentException("port must be 1 to 65535: " + port);
        }
        if (folder.isBlank()) {
            throw new IllegalArgumentException("folder must not be empty");
        }
        if (poll.compareTo(SHORTEST_POLL) < 0 || poll.compareTo(LONGEST_POLL) > 0) {
            throw new IllegalArgumentException("poll must be from 100 ms to 25 minutes: " + poll);
        }
        if (own.indexOf('@') < 1) {
            throw new IllegalArgumentException("own address must be a mail address: " + own);
        }
        authority = authority.map(name -> name.strip().toLowerCase(Locale.ROOT));
    }

    String server() {
        return host + ":" + port;
    }
}
