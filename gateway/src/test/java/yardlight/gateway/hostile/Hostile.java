package yardlight.gateway.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Makes bad input out of good: by words, so that what comes out is still nearly what a door reads, and by bytes. The same
 * generator makes the same input again.
 */
final class Hostile {

    private static final Pattern WORD =
            Pattern.compile("\"(?:[^\"\\\\]++|\\\\.)*+\"|[A-Za-z0-9_.+:/*-]+|[\\[\\]{}:,&=]", Pattern.DOTALL);
    private static final int LONGEST = 40_000;
    private static final int DEEPEST = 3_000;

    /** In place of a word. Names of these tricks are in the comment of each line. */
    private static final List<String> WORDS = List.of(
            // numbers
            "1e999999999",
            "-1e-999999999",
            "99999999999999999999999999999999",
            "-0",
            "00",
            "0x10",
            "1_000",
            "NaN",
            "-Infinity",
            ".5",
            "5.",
            "1e",
            "9223372036854775808",
            "1.0000000000000000000000001",
            // texts
            "\"\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "\"\\udc00\\ud800\"",
            "\"\\x\"",
            "\"\ud83d\ude00\"",
            "\"\u202e\u0000\"",
            "\"'; drop table alarm; --\"",
            "\"<script>alert(1)</script>\"",
            "\"${jndi:ldap://x.example/a}\"",
            "\"../../etc/passwd\"",
            "\"=1+1\"",
            "\"\\r\\nX: y\"",
            // times, lengths, zones
            "\"9999-12-31T23:59:60Z\"",
            "\"+999999999-12-31T00:00:00Z\"",
            "\"2026-02-30T00:00:00Z\"",
            "\"PT9223372036854775807S\"",
            "\"P-1D\"",
            "\"24:00\"",
            "\"Mars/Base\"",
            "\"-00:00\"",
            // what else there is
            "null",
            "true",
            "[]",
            "{}",
            "[[]]",
            "{\"a\":{}}",
            "~",
            "!!binary aGk=",
            "!!java.lang.Runtime {}",
            "*a",
            "&a [*a]",
            "<<: *a",
            "? [a]",
            "|",
            ">-",
            "%YAML 9.9",
            "---",
            "...",
            "\t",
            "#",
            "@",
            "`",
            "active",
            "normal",
            "mesa-9",
            "water-tank",
            "id",
            "point");

    /** Bytes that are no text, or no text that should be. */
    private static final List<byte[]> BYTES = List.of(
            bytes(0xC0, 0x80),
            bytes(0xF0, 0x82, 0x82, 0xAC),
            bytes(0xED, 0xA0, 0x80),
            bytes(0xF8, 0x88, 0x80, 0x80, 0x80),
            bytes(0xFF),
            bytes(0xEF, 0xBB, 0xBF),
            bytes(0),
            bytes(13, 10),
            bytes(13),
            bytes(0xE2, 0x80, 0xA8),
            bytes(0x1B, '[', '2', 'J'),
            bytes(0x80));

    private final Random random;

    Hostile(long seed, long number) {
        // Neighbouring seeds give neighbouring first numbers; this spreads them.
        this.random = new Random((seed * 0x9E3779B97F4A7C15L + number) * 0xBF58476D1CE4E5B9L);
    }

    private static byte[] bytes(int... values) {
        var bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** Mostly one or two changes of words, and in every fifth case some of bytes as well. */
    byte[] spoilt(String good, List<String> others) {
        String text = good;
        int changes = random.nextInt(10) == 0 ? 8 : 1 + random.nextInt(2);
        for (int i = 0; i < changes && text.length() < LONGEST; i++) {
            text = byWords(text, others);
        }
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return random.nextInt(5) == 0 ? byBytes(bytes) : bytes;
    }

    private String byWords(String text, List<String> others) {
        List<MatchResult> words = WORD.matcher(text).results().toList();
        if (words.isEmpty()) {
            return one(WORDS);
        }
        MatchResult word = value(text, words);
        String before = text.substring(0, word.start());
        String after = text.substring(word.end());
        return switch (random.nextInt(11)) {
            case 0, 1, 2, 3, 4 -> before + instead(word.group()) + after;
            case 5 -> before + nested(word.group()) + after;
            case 6 -> before + word.group() + separator() + word.group() + after;
            case 7 -> before + after;
            case 8 -> before + repeated(word.group()) + after;
            case 9 -> before + text.substring(one(words).start());
            default -> before + one(others) + after;
        };
    }

    /** As a rule one that is no name of a field and no sign: what they stand for is what a door looks at last. */
    private MatchResult value(String text, List<MatchResult> words) {
        MatchResult word = one(words);
        for (int i = 0; i < 20 && random.nextInt(6) > 0 && !isValue(text, word); i++) {
            word = one(words);
        }
        return word;
    }

    private static boolean isValue(String text, MatchResult word) {
        boolean sign = word.group().length() == 1 && "[]{}:,&=".contains(word.group());
        int after = word.end();
        return !sign && (after == text.length() || ":=".indexOf(text.charAt(after)) < 0);
    }

    private String repeated(String word) {
        int times = 1 + random.nextInt(200);
        return word.length() > 1 && word.startsWith("\"")
                ? "\"" + word.substring(1, word.length() - 1).repeat(times) + "\""
                : word.repeat(times);
    }

    /** As a rule of the same kind, so that it is the field that is wrong and not the document. */
    private String instead(String word) {
        boolean text = word.startsWith("\"");
        String other = one(WORDS);
        for (int i = 0; i < 20 && random.nextInt(10) > 0 && text != other.startsWith("\""); i++) {
            other = one(WORDS);
        }
        return text && random.nextInt(3) == 0 ? within(word) : other;
    }

    /** One letter of a text is another one. */
    private String within(String text) {
        int at = 1 + random.nextInt(text.length() - 1);
        return text.substring(0, at) + (char) (' ' + random.nextInt(400)) + text.substring(at);
    }

    private String nested(String word) {
        int depth = random.nextInt(20) == 0 ? DEEPEST : 1 + random.nextInt(70);
        return random.nextBoolean()
                ? "[".repeat(depth) + word + "]".repeat(depth)
                : "{\"a\":".repeat(depth) + word + "}".repeat(depth);
    }

    private String separator() {
        return one(List.of(",", ", ", "\n", "\r\n", " ", "&", ";", "\u0000"));
    }

    private byte[] byBytes(byte[] good) {
        byte[] bytes = good;
        for (int i = random.nextInt(3); i >= 0 && bytes.length > 0; i--) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(4)) {
                case 0 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> bytes = spliced(bytes, at, one(BYTES), at);
                case 2 -> bytes = spliced(bytes, at, new byte[0], Math.min(bytes.length, at + 1 + random.nextInt(9)));
                default -> bytes = spliced(bytes, at, new byte[0], bytes.length);
            }
        }
        return bytes;
    }

    /** What is before {@code from}, the middle, and what begins at {@code to}. */
    private static byte[] spliced(byte[] bytes, int from, byte[] middle, int to) {
        var out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(middle);
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }

    /** For a path or a query: every byte that may not stand there written as RFC 3986 2.1 says, and some that may. */
    static String percent(byte[] bytes) {
        var out = new StringBuilder();
        for (byte one : bytes) {
            int value = one & 0xFF;
            boolean plain = value < 128 && (Character.isLetterOrDigit(value) || "-_.~=&:*".indexOf(value) >= 0);
            out.append(plain ? String.valueOf((char) value) : "%%%02X".formatted(value));
        }
        return out.toString();
    }

    /** For a header: what cannot stand in one at all is left out. */
    static String header(byte[] bytes) {
        var out = new StringBuilder();
        for (byte one : bytes) {
            int value = one & 0xFF;
            out.append(value >= ' ' && value != 127 ? String.valueOf((char) value) : "");
        }
        return out.toString();
    }

    List<String> several(List<String> of) {
        var some = new ArrayList<String>();
        for (int i = random.nextInt(5); i >= 0; i--) {
            some.add(one(of));
        }
        return some;
    }
}
