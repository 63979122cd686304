package yardlight.channels.mail;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The Message-IDs of our mails where answers to them are heard. Each is made of what the message is called, by which channel and
 * to which address it goes, and of 64 bits that only who has the key can make of those. So whoever refers to one has seen
 * that mail, and no other address has one that is good for it.
 */
public final class MailNames {

    private static final String MAC = "HmacSHA256";
    private static final int BYTES = 8;

    /** What stands before the last dot is URL-encoded and so has none. */
    private static final Pattern FORM = Pattern.compile("<([!-;=?A-~&&[^.@]]+)\\.([a-z])([0-9a-f]{16})@([^@<>]+)>");

    private final SecretKeySpec key;

    /** @param key secret, and the same for as long as answers may come */
    public MailNames(byte[] key) {
        this.key = new SecretKeySpec(key, MAC);
    }

    /** RFC 5322 3.6.4: the left side is a dot-atom. URL encoding leaves only characters that may stand in one, and dots. */
    static String left(String id) {
        return URLEncoder.encode(id, StandardCharsets.UTF_8).replace(".", "%2E");
    }

    String of(Form form, String id, String address, String domain) {
        String left = left(id);
        return "<" + left + "." + form.letter() + proof(form, left, address) + "@" + domain + ">";
    }

    /** The channel of the mail that this names; empty when it is no name that was made here. */
    public static Optional<String> channel(String messageId) {
        return form(FORM.matcher(messageId)).map(Form::channel);
    }

    /** Whether a mail of this name went to this address. */
    public boolean wentTo(String messageId, String address) {
        Matcher parts = FORM.matcher(messageId);
        return form(parts)
                .filter(form -> proof(form, parts.group(1), address).equals(parts.group(3)))
                .isPresent();
    }

    private static Optional<Form> form(Matcher parts) {
        return parts.matches() ? Form.of(parts.group(2).charAt(0)) : Optional.empty();
    }

    private String proof(Form form, String left, String address) {
        String all = form.channel() + "\n" + left + "\n" + address.toLowerCase(Locale.ROOT);
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(key);
            byte[] whole = mac.doFinal(all.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(Arrays.copyOf(whole, BYTES));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + MAC, e);
        }
    }
}
