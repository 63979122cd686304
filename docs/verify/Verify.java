import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells whether an exported log is whole and unchanged. It needs a Java of 17 or later and these files, and nothing of the
 * gateway that wrote them:
 *
 * <pre>java Verify.java export.txt [earlier-head.json]</pre>
 *
 * <p>Ends with 0 when everything fits, with 1 when something does not, and says which line. The hashes are those of
 * RFC 6962 (2.1 and 3.5), the signature is Ed25519 (RFC 8032).
 */
public final class Verify {

    private static final Pattern LINE = Pattern.compile("(\\d{1,18}) ([0-9a-f]{64}) (\\{.*})", Pattern.DOTALL);
    private static final Pattern RANGE = Pattern.compile("(cut|sum) (\\d{1,18}) (\\d{1,18}) ([0-9a-f]{64})");
    private static final Pattern NUMBER = Pattern.compile("\"line\":(\\d{1,18})[,}]");
    private static final Pattern HEAD = Pattern.compile("\\{\"at\":\"([^\"]+)\",\"first\":(\\d{1,18}),\"publicKey\":\"([0-9a-f]+)\""
            + ",\"root\":\"([0-9a-f]{64})\",\"signature\":\"([0-9a-f]+)\",\"size\":(\\d{1,18})}");
    private static final String FIRST = "yardlight log 1";
    private static final int RANGE_LENGTH = 256;

    /** A head as it was signed. */
    record Head(String at, long first, String key, String root, String signature, long size) {}

    /** A subtree: how many leaves, and their hash. */
    private record Subtree(long leaves, byte[] hash) {}

    private final List<String> faults = new ArrayList<>();
    private final Deque<Subtree> edge = new ArrayDeque<>();
    private final Deque<Subtree> range = new ArrayDeque<>();
    private final Optional<Head> earlier;
    private Optional<Head> head = Optional.empty();
    private long fileLine;
    private long next;
    private long leaves;
    private boolean ended;
    private boolean earlierMet;
    private long cutTo;

    private Verify(Optional<Head> earlier) {
        this.earlier = earlier;
    }

    public static void main(String[] arguments) throws IOException {
        if (arguments.length < 1 || arguments.length > 2) {
            System.err.println("java Verify.java export.txt [earlier-head.json]");
            System.exit(2);
        }
        List<String> found = check(
                Path.of(arguments[0]),
                arguments.length == 2 ? Optional.of(Files.readString(Path.of(arguments[1]))) : Optional.empty());
        found.forEach(System.out::println);
        System.exit(found.get(0).startsWith("OK") ? 0 : 1);
    }

    /** What was found: one sentence that begins with OK, or one for each thing that does not fit. */
    static List<String> check(Path export, Optional<String> earlierHead) throws IOException {
        Optional<Head> earlier = earlierHead.flatMap(text -> head(text.strip()));
        if (earlierHead.isPresent() && earlier.isEmpty()) {
            return List.of("WRONG: the earlier head is not a head");
        }
        var verify = new Verify(earlier);
        try (BufferedReader reader = Files.newBufferedReader(export, StandardCharsets.ISO_8859_1)) {
            verify.read(reader);
        }
        return verify.found();
    }

    private void read(BufferedReader reader) throws IOException {
        for (String line = line(reader); line != null; line = line(reader)) {
            fileLine++;
            if (fileLine == 1) {
                expect(line.equals(FIRST), "the file does not begin with '" + FIRST + "'");
            } else if (fileLine == 2) {
                begin(line);
            } else if (head.isPresent()) {
                take(line);
            }
        }
        end();
    }

    /** A line up to its line feed, and nothing else ends one: a carriage return is part of it, and will not fit. */
    private static String line(BufferedReader reader) throws IOException {
        var line = new StringBuilder();
        for (int c = reader.read(); c >= 0; c = reader.read()) {
            if (c == '\n') {
                return line.toString();
            }
            line.append((char) c);
        }
        return line.isEmpty() ? null : line.append("<no line feed>").toString();
    }

    private void begin(String line) {
        head = line.startsWith("head ") ? head(line.substring("head ".length())) : Optional.empty();
        if (head.isEmpty()) {
            fault("line 2 of the file is not the head that it should be; without it nothing can be checked");
            return;
        }
        next = head.get().first();
        expect(signed(head.get()), "the head in line 2 of the file was changed: its signature does not fit");
        earlier.ifPresent(before -> {
            expect(signed(before), "the earlier head was changed: its signature does not fit");
            expect(before.key().equals(head.get().key()), "the head in line 2 of the file was signed with another key");
            expect(before.first() == head.get().first(), "the head in line 2 of the file begins elsewhere than the earlier");
            expect(before.size() <= head.get().size(), "lines were removed from the end: the earlier head has "
                    + before.size() + " lines, this one " + head.get().size());
        });
        meetEarlier();
    }

    private void take(String line) {
        Matcher entry = LINE.matcher(line);
        Matcher marked = RANGE.matcher(line);
        if (ended) {
            fault("something stands after the end");
        } else if (entry.matches()) {
            entry(Long.parseLong(entry.group(1)), entry.group(2), entry.group(3));
        } else if (marked.matches()) {
            range(marked.group(1), Long.parseLong(marked.group(2)), Long.parseLong(marked.group(3)), marked.group(4));
        } else if (line.equals("end " + (next - 1))) {
            ended = true;
        } else {
            fault("line " + next + " of the log should stand here; this is no line of an export");
        }
    }

    private void entry(long number, String hash, String text) {
        if (number > next) {
            fault(number == next + 1 ? "line " + next + " was removed" : "lines " + next + " to " + (number - 1) + " were removed");
        } else if (number < next) {
            fault("line " + number + " was inserted, repeated or moved: line " + next + " should stand here");
            return;
        }
        sumIsThere();
        next = number;
        byte[] leaf = hash(0, text.getBytes(StandardCharsets.ISO_8859_1));
        Matcher said = NUMBER.matcher(text);
        if (!hex(leaf).equals(hash)) {
            fault("line " + number + " was changed: its hash does not fit");
        } else if (!said.find() || Long.parseLong(said.group(1)) != number) {
            fault("line " + number + " was changed: it carries another number");
        }
        push(edge, new Subtree(1, leaf));
        push(range, new Subtree(1, leaf));
        next++;
        leaves++;
        meetEarlier();
    }

    /** Behind each 256 lines stands their sum. */
    private void sumIsThere() {
        if (range.size() == 1 && range.peek().leaves() == RANGE_LENGTH) {
            fault("the sum that stands behind line " + (next - 1) + " was removed");
            range.clear();
        }
    }

    private void range(String kind, long from, long to, String hash) {
        if (to - from + 1 != RANGE_LENGTH) {
            fault("a range must have " + RANGE_LENGTH + " lines, not " + (to - from + 1));
        } else if (kind.equals("cut")) {
            boolean begins = leaves == cutTo - head.get().first() + 1 || leaves == 0;
            expect(from == next && begins, "line " + next + " should stand here, not the hash of " + from + " to " + to);
            cutTo = to;
            push(edge, new Subtree(RANGE_LENGTH, HexFormat.of().parseHex(hash)));
            leaves += RANGE_LENGTH;
            next = to + 1;
            meetEarlier();
        } else {
            String sum = range.size() == 1 ? hex(range.peek().hash()) : "";
            expect(to == next - 1, "the sum of lines " + from + " to " + to + " stands behind line " + (next - 1));
            expect(sum.equals(hash), "among lines " + from + " to " + to + " one was changed, or the sum of them");
            range.clear();
        }
    }

    private void end() {
        if (head.isEmpty()) {
            return;
        }
        long last = head.get().first() + head.get().size() - 1;
        sumIsThere();
        expect(ended, "the file ends before its end line: the rest was removed");
        expect(next - 1 >= last, "lines " + next + " to " + last + " were removed from the end");
        expect(next - 1 <= last, "there are lines after line " + last + ", the last one of the head");
        expect(root().equals(head.get().root()), "the hash over all lines is not that of the head in line 2 of the file");
        earlier.filter(before -> !earlierMet && before.size() > leaves)
                .ifPresent(before -> fault("the lines up to " + (before.first() + before.size() - 1)
                        + ", which the earlier head vouches for, are not all there"));
    }

    /** The log as it was at the earlier head must have had its root. */
    private void meetEarlier() {
        earlier.filter(before -> before.size() == leaves && !earlierMet).ifPresent(before -> {
            earlierMet = true;
            expect(root().equals(before.root()), "among lines " + before.first() + " to " + (next - 1)
                    + " something was changed after the earlier head was given out");
        });
        earlier.filter(before -> before.size() < leaves && !earlierMet).ifPresent(before -> {
            earlierMet = true;
            fault("cannot tell: the earlier head ends within lines that are not kept any more; take a later one");
        });
    }

    private List<String> found() {
        expect(fileLine > 1, "the file ends before its head");
        if (!faults.isEmpty()) {
            return faults;
        }
        long first = Math.max(head.orElseThrow().first(), cutTo + 1);
        String which = "OK: lines " + first + " to " + (next - 1) + " are whole and unchanged, as of " + head.get().at()
                + (cutTo > 0 ? "; of those up to " + cutTo + " only the hashes are kept" : "");
        return List.of(which + earlier.map(before -> ", and the first " + before.size()
                        + " are those of the earlier head of " + before.at())
                .orElse(". Without an earlier head this only shows that the file fits together"));
    }

    private void expect(boolean holds, String otherwise) {
        if (!holds) {
            fault(otherwise);
        }
    }

    private void fault(String words) {
        if (faults.size() < 20) {
            faults.add("WRONG (line " + fileLine + " of the file): " + words);
        }
    }

    private static Optional<Head> head(String json) {
        return HEAD.matcher(json).results().filter(found -> found.group().equals(json)).findFirst().map(found -> new Head(
                found.group(1),
                Long.parseLong(found.group(2)),
                found.group(3),
                found.group(4),
                found.group(5),
                Long.parseLong(found.group(6))));
    }

    private static boolean signed(Head head) {
        try {
            Instant at = Instant.parse(head.at());
            var key = KeyFactory.getInstance("Ed25519")
                    .generatePublic(new X509EncodedKeySpec(HexFormat.of().parseHex(head.key())));
            var signature = Signature.getInstance("Ed25519");
            signature.initVerify(key);
            signature.update(ByteBuffer.allocate(50)
                    .put((byte) 0)
                    .put((byte) 1)
                    .putLong(at.toEpochMilli())
                    .putLong(head.size())
                    .put(HexFormat.of().parseHex(head.root()))
                    .array());
            return at.toString().equals(head.at()) && signature.verify(HexFormat.of().parseHex(head.signature()));
        } catch (GeneralSecurityException | RuntimeException e) {
            return false;
        }
    }

    /** Adds leaves at the right, and joins what is of one size. */
    private static void push(Deque<Subtree> stack, Subtree leaf) {
        Subtree right = leaf;
        while (!stack.isEmpty() && stack.peek().leaves() == right.leaves()) {
            Subtree left = stack.pop();
            right = new Subtree(2 * left.leaves(), hash(1, left.hash(), right.hash()));
        }
        stack.push(right);
    }

    private String root() {
        byte[] root = null;
        for (Subtree one : edge) {
            root = root == null ? one.hash() : hash(1, one.hash(), root);
        }
        return hex(root == null ? sha256().digest() : root);
    }

    /** Of a leaf (0) or of a node (1). */
    private static byte[] hash(int kind, byte[]... parts) {
        MessageDigest digest = sha256();
        digest.update((byte) kind);
        for (byte[] part : parts) {
            digest.update(part);
        }
        return digest.digest();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}
