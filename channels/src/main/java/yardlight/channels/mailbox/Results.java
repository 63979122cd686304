package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the own mail server says of who sent a mail: Authentication-Results (RFC 8601 2.2). That of any other server is worth
 * nothing, and the own one takes out what others put in under its name (5).
 */
enum Results {
    /** The domain of the sender stands by this mail. */
    GENUINE,
    /** Its domain says that such mails are not from there. */
    FORGED,
    /** Nothing was said that decides it. */
    UNKNOWN;

    /** May be made of what the sender gave, and so is never looked into. */
    private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*+\"");

    private static final Pattern COMMENT = Pattern.compile("\\([^()]*+\\)");
    private static final Pattern RESULT = Pattern.compile("\\s*([a-z0-9-]+)(?:\\s*/\\s*\\d+)?\\s*=\\s*([a-z]+)\\b(.*)");

    static Results of(Fields fields, Optional<String> authority, String from) throws MessagingException {
        Results all = UNKNOWN;
        String domain = from.substring(from.lastIndexOf('@') + 1);
        for (String value : fields.all("Authentication-Results")) {
            String[] parts = bare(value).toLowerCase(Locale.ROOT).split(";", -1);
            boolean own = authority
                    .filter(parts[0].strip().split("\\s+", 2)[0]::equals)
                    .isPresent();
            for (int i = 1; own && i < parts.length; i++) {
                Results one = one(parts[i], domain);
                if (one == FORGED) {
                    return FORGED;
                }
                all = one == GENUINE ? GENUINE : all;
            }
        }
        return all;
    }

    /** Without quoted strings and comments; empty when they do not come in pairs, for then it could say anything. */
    private static String bare(String value) {
        String rest = QUOTED.matcher(value).replaceAll("");
        for (String before = ""; !before.equals(rest); ) {
            before = rest;
            rest = COMMENT.matcher(before).replaceAll(" ");
        }
        return rest.matches(".*[\"()\\\\].*") ? "" : rest;
    }

    private static Results one(String result, String domain) {
        Matcher parts = RESULT.matcher(result);
        if (!parts.matches()) {
            return UNKNOWN;
        }
        String method = parts.group(1);
        if (method.equals("dmarc") && parts.group(2).equals("fail")) {
            return FORGED;
        }
        Optional<String> signed = switch (method) {
            case "dmarc" -> property(parts.group(3), "header\\.from");
            case "dkim" -> property(parts.group(3), "header\\.d");
            case "spf" -> property(parts.group(3), "smtp\\.mailfrom");
            default -> Optional.empty();
        };
        boolean same = signed.filter(name -> domain.equals(name) || domain.endsWith("." + name))
                .isPresent();
        return parts.group(2).equals("pass") && same ? GENUINE : UNKNOWN;
    }

    /** A domain, or that of an address. */
    private static Optional<String> property(String properties, String name) {
        Matcher found = Pattern.compile("\\b" + name + "\\s*=\\s*(?:[^\\s;@]*@)?([a-z0-9.-]*\\.[a-z0-9-]+)(?=\\s|$)")
                .matcher(properties);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }
}
