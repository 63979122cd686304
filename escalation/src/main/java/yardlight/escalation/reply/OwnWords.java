package yardlight.escalation.reply;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the person wrote, without what they quoted, without signature and without what their phone or carrier added. */
final class OwnWords {

    private static final String WROTE = "\\b(wrote|escribio|ha escrito)\\s*:";

    /** It may stand on two lines. What follows is a quotation, to the end unless it is marked line by line. */
    private static final Pattern QUOTE = Pattern.compile("(on|el|am|le)\\b.{6,200}" + WROTE + "?|.{0,120}" + WROTE);

    /** From such a line on nothing is the person's own. */
    private static final Pattern NOT_OWN = Pattern.compile(
            "-{2,}\\s*(original message|mensaje original|forwarded message|mensaje reenviado|reply above).*|[_=-]{5,}"
                    + "|\\*?(from|de)\\s*:\\*? .*|begin forwarded message:?"
                    + "|(this|este) (e-?mail|message|mensaje|correo)\\b.{20,}|(aviso|notice|disclaimer)\\s*:.*|.*\\bconfidential(ity)?\\b.*"
                    + "|--\\s?|—");

    private static final Pattern ADDED = Pattern.compile(
            "(sent|send) (from|via|with|using|by) .*|(enviado|mandado|enviada) (desde|con|por|via) .*"
                    + "|get .{3,30} for .*|fro?m: ?\\+?\\d.*|(msg|mensaje|message|txt|text)\\s*\\d+\\s*(of|de|/)\\s*\\d+");

    /** What stands before the words on their line. */
    private static final Pattern BEFORE = Pattern.compile("^(msg|message|txt|mensaje) ?: ?|^\\(\\d+ ?/ ?\\d+\\) ?");

    /** How our texts end: such a line is ours, sent back; with the person's words before a dash. */
    private static final Pattern OURS = Pattern.compile(
            "(?:(?<own>.{2,40}?) - )?.*(?:\\b(reply|responda) (ok ?#? ?\\d+|all)\\b|https?://\\S+/a/\\S+).*");

    private OwnWords() {}

    /** Line by line, without empty ones, in small letters. */
    static List<String> of(String text) {
        List<String> lines =
                text.lines().map(line -> Letters.plain(line).strip()).toList();
        var own = new ArrayList<String>();
        for (int i = 0; i < lines.size() && !NOT_OWN.matcher(lines.get(i)).matches(); i++) {
            int quotes = quoteLines(lines, i);
            if (quotes > 0) {
                if (!marked(lines, i + quotes)) {
                    break;
                }
                i += quotes - 1;
            } else {
                add(lines.get(i), own);
            }
        }
        return own;
    }

    private static void add(String line, List<String> own) {
        Matcher ours = OURS.matcher(line);
        String words = ours.matches() ? (ours.group("own") == null ? "" : ours.group("own")) : line;
        if (!words.startsWith(">") && !ADDED.matcher(words).matches()) {
            String bare = BEFORE.matcher(words).replaceAll("");
            if (!bare.isEmpty()) {
                own.add(bare);
            }
        }
    }

    /** How many lines say that somebody else wrote what follows: 0, 1 or 2. */
    private static int quoteLines(List<String> lines, int at) {
        if (QUOTE.matcher(lines.get(at)).matches()
                && lines.get(at).matches(".*" + WROTE + "?.*(wrote|escribio|ha escrito).*")) {
            return 1;
        }
        boolean two = at + 1 < lines.size()
                && lines.get(at).matches("(on|el) .{6,200}")
                && QUOTE.matcher(lines.get(at) + " " + lines.get(at + 1)).matches()
                && lines.get(at + 1).matches(".*" + WROTE);
        return two ? 2 : 0;
    }

    /** Whether the next line with anything on it is marked as a quotation. */
    private static boolean marked(List<String> lines, int from) {
        return lines.stream()
                .skip(from)
                .filter(line -> !line.isEmpty())
                .findFirst()
                .filter(line -> line.startsWith(">"))
                .isPresent();
    }
}
