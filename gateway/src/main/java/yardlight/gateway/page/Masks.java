package yardlight.gateway.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.escalation.proof.LineHealth;

/** How much of an address is shown to those who may only read: enough to tell it from others, too little to use it. */
public final class Masks {

    private static final String MASK = "***";
    private static final int NUMBER = 8;
    private static final int SHOWN = 4;
    private static final Pattern MAIL = Pattern.compile("(?<![*\\w.+-])[\\w.+-]+@[\\w-]+(?:\\.[\\w-]+)+");

    private Masks() {}

    /** {@code ***0101@txt.example} for a number, {@code ***@ranch.example} for a name, {@code ***} for anything else. */
    public static String of(String address) {
        int at = address.lastIndexOf('@');
        String local = at < 0 ? address : address.substring(0, at);
        boolean number = local.matches("[+0-9 ().-]+") && digits(local).length() >= NUMBER;
        return MASK + (number ? local.substring(local.length() - SHOWN) : "") + (at < 0 ? "" : address.substring(at));
    }

    /** What is known of a line; carriers like to repeat the address in what they say of it. */
    public static LineHealth of(LineHealth line) {
        return line.trouble()
                .map(said -> line.troubled(
                        said.at(), mails(in(said.words(), line.key().address()))))
                .orElse(line);
    }

    /** Words without this address, however a carrier writes it: in other capitals, or its number with less before it. */
    public static String in(String words, String address) {
        if (address.isEmpty()) {
            return words;
        }
        Pattern whole = Pattern.compile("(?<!\\w)" + Pattern.quote(address) + "(?!\\w)", Pattern.CASE_INSENSITIVE);
        String hidden = whole.matcher(words).replaceAll(Matcher.quoteReplacement(of(address)));
        int at = address.lastIndexOf('@');
        String number = digits(at < 0 ? address : address.substring(0, at));
        if (number.length() < NUMBER) {
            return hidden;
        }
        return Pattern.compile("\\d*" + number.substring(number.length() - NUMBER))
                .matcher(hidden)
                .replaceAll(found -> Matcher.quoteReplacement(of(found.group())));
    }

    /** Words without any mail address. */
    public static String mails(String words) {
        return MAIL.matcher(words).replaceAll(found -> Matcher.quoteReplacement(of(found.group())));
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]", "");
    }
}
