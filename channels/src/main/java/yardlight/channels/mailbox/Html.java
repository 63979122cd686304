package yardlight.channels.mailbox;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a person reads of a mail in HTML, line by line, in one pass. What is quoted gets a mark before each line, as in plain
 * text; what is not shown is left out.
 */
final class Html {

    private static final Set<String> UNSEEN = Set.of("head", "style", "script", "title", "template", "svg");
    private static final Set<String> LINES = Set.of(
            "br",
            "p",
            "div",
            "tr",
            "li",
            "ul",
            "ol",
            "table",
            "blockquote",
            "hr",
            "h1",
            "h2",
            "h3",
            "h4",
            "h5",
            "h6",
            "pre");
    private static final Set<String> WITHOUT_END =
            Set.of("br", "hr", "img", "input", "meta", "link", "area", "col", "wbr");

    private static final Pattern HIDDEN =
            Pattern.compile("display\\s*:\\s*none|visibility\\s*:\\s*hidden|font-size\\s*:\\s*0(?![.\\d])");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0]+");

    private final String html;
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder line = new StringBuilder();
    private int quotes;
    private String unseen = "";
    private int unseenDepth;

    private Html(String html) {
        this.html = html;
    }

    static String text(String html) {
        return new Html(html).read();
    }

    private String read() {
        int at = 0;
        while (at < html.length()) {
            int tag = html.indexOf('<', at);
            words(html.substring(at, tag < 0 ? html.length() : tag));
            at = tag < 0 ? html.length() : afterTag(tag);
        }
        endLine();
        return text.toString();
    }

    private int afterTag(int start) {
        boolean comment = html.startsWith("<!--", start);
        int end = html.indexOf(comment ? "-->" : ">", start);
        if (end < 0) {
            return html.length();
        }
        if (!comment) {
            tag(html.substring(start + 1, end).toLowerCase(Locale.ROOT));
        }
        return end + (comment ? 3 : 1);
    }

    private void tag(String inside) {
        boolean closes = inside.startsWith("/");
        String name = (closes ? inside.substring(1) : inside).split("[\\s/]", 2)[0];
        if (name.equals("body") && unseen.equals("head")) {
            unseen = "";
        }
        if (!unseen.isEmpty()) {
            if (name.equals(unseen)) {
                unseenDepth += closes ? -1 : 1;
            }
            unseen = unseenDepth <= 0 ? "" : unseen;
            return;
        }
        boolean hides = UNSEEN.contains(name) || HIDDEN.matcher(inside).find();
        if (!closes && hides && !WITHOUT_END.contains(name) && !inside.endsWith("/")) {
            unseen = name;
            unseenDepth = 1;
            return;
        }
        if (LINES.contains(name)) {
            endLine();
        }
        if (name.equals("blockquote")) {
            quotes = Math.max(0, quotes + (closes ? -1 : 1));
        }
    }

    private void words(String raw) {
        if (unseen.isEmpty()) {
            line.append(raw);
        }
    }

    private void endLine() {
        String words = BLANKS.matcher(Entities.decoded(line.toString()))
                .replaceAll(" ")
                .strip();
        line.setLength(0);
        if (!words.isEmpty()) {
            text.append(quotes > 0 ? "> " : "").append(words).append('\n');
        }
    }
}
