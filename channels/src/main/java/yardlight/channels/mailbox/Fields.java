package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeUtility;
import java.io.UnsupportedEncodingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Header lines, by their names in any letter case, each on one line. */
record Fields(Source source) {

    /** Where they stand. */
    interface Source {
        /** Null if there are none. */
        String[] named(String name) throws MessagingException;
    }

    private static final Pattern MESSAGE_ID = Pattern.compile("<[^<>\\s]{1,900}>");
    private static final int MOST_IDS = 100;

    List<String> all(String name) throws MessagingException {
        String[] values = source.named(name);
        var all = new ArrayList<String>();
        for (String value : values == null ? new String[0] : values) {
            all.add(MimeUtility.unfold(value).strip());
        }
        return all;
    }

    Optional<String> first(String name) throws MessagingException {
        return all(name).stream().findFirst();
    }

    boolean has(String name) throws MessagingException {
        return source.named(name) != null;
    }

    /** Words as a person reads them. */
    String words(String name) throws MessagingException {
        String value = first(name).orElse("");
        try {
            return MimeUtility.decodeText(value);
        } catch (UnsupportedEncodingException e) {
            return value;
        }
    }

    List<String> messageIds(String name) throws MessagingException {
        return all(name).stream()
                .flatMap(value -> MESSAGE_ID.matcher(value).results())
                .limit(MOST_IDS)
                .map(found -> found.group())
                .toList();
    }

    /** The one address of the one From; empty when there are several or none, or nobody can read them. */
    Optional<String> sender() throws MessagingException {
        List<String> from = all("From");
        try {
            InternetAddress[] addresses =
                    from.size() == 1 ? InternetAddress.parseHeader(from.get(0), false) : new InternetAddress[0];
            return addresses.length == 1 && !addresses[0].isGroup()
                    ? Optional.ofNullable(addresses[0].getAddress())
                            .map(address -> address.toLowerCase(Locale.ROOT))
                            .filter(address -> address.indexOf('@') > 0)
                    : Optional.empty();
        } catch (AddressException e) {
            return Optional.empty();
        }
    }
}
