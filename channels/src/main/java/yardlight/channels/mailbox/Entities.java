package yardlight.channels.mailbox;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Characters that HTML writes by name or number: all numbers, and the names that mails in English and Spanish have. */
final class Entities {

    private static final Pattern ENTITY =
            Pattern.compile("&(?:#([0-9]{1,7})|#[xX]([0-9A-Fa-f]{1,6})|([A-Za-z]{2,8}));?");

    private static final Map<String, String> NAMED = Map.ofEntries(
            Map.entry("nbsp", " "),
            Map.entry("amp", "&"),
            Map.entry("lt", "<"),
            Map.entry("gt", ">"),
            Map.entry("quot", "\""),
            Map.entry("apos", "'"),
            Map.entry("aacute", "á"),
            Map.entry("eacute", "é"),
            Map.entry("iacute", "í"),
            Map.entry("oacute", "ó"),
            Map.entry("uacute", "ú"),
            Map.entry("uuml", "ü"),
            Map.entry("ntilde", "ñ"),
            Map.entry("Aacute", "Á"),
            Map.entry("Eacute", "É"),
            Map.entry("Iacute", "Í"),
            Map.entry("Oacute", "Ó"),
            Map.entry("Uacute", "Ú"),
            Map.entry("Ntilde", "Ñ"),
            Map.entry("iquest", "¿"),
            Map.entry("iexcl", "¡"),
            Map.entry("laquo", "«"),
            Map.entry("raquo", "»"),
            Map.entry("ldquo", "“"),
            Map.entry("rdquo", "”"),
            Map.entry("lsquo", "‘"),
            Map.entry("rsquo", "’"),
            Map.entry("ndash", "–"),
            Map.entry("mdash", "—"),
            Map.entry("hellip", "…"));

    private Entities() {}

    static String decoded(String text) {
        return text.indexOf('&') < 0
                ? text
                : ENTITY.matcher(text)
                        .replaceAll(found -> Matcher.quoteReplacement(
                                one(found.group(), found.group(1), found.group(2), found.group(3))));
    }

    private static String one(String whole, String decimal, String hexadecimal, String name) {
        if (name != null) {
            return NAMED.getOrDefault(name, whole);
        }
        int point = decimal != null ? Integer.parseInt(decimal) : Integer.parseInt(hexadecimal, 16);
        return Character.isValidCodePoint(point) && point > 0 ? Character.toString(point) : whole;
    }
}
