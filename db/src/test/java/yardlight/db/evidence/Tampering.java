package yardlight.db.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One change to an export.
 *
 * @param kind one of six
 * @param what was done, for whoever reads a failed test
 * @param named what the verifier must say among other things
 * @param export the file after it
 */
record Tampering(String kind, String what, String named, String export) {

    /** The first of the file's lines that is a line of the log. */
    private static final int FIRST = 2;

    static Tampering draw(Random random, List<String> export) {
        int at = FIRST + random.nextInt(export.size() - FIRST - 2);
        while (!isLine(export.get(at)) || !isLine(export.get(at + 1))) {
            at = FIRST + random.nextInt(export.size() - FIRST - 2);
        }
        return random.nextInt(6) == 0 ? anyCharacter(random, export) : aLine(random, export, at);
    }

    private static Tampering aLine(Random random, List<String> export, int at) {
        var lines = new ArrayList<>(export);
        String line = "line " + export.get(at).split(" ")[0];
        String next = export.get(at + 1).split(" ")[0];
        switch (random.nextInt(5)) {
            case 0 -> {
                lines.remove(at);
                return of("line removed", line + " removed", line + " was removed", lines);
            }
            case 1 -> {
                lines.add(at + 1, lines.get(at));
                return of("line inserted", line + " twice", line + " was inserted, repeated or moved", lines);
            }
            case 2 -> {
                lines.add(at + 1, lines.remove(at));
                return of("order", line + " behind the next", line + " was ", lines);
            }
            case 3 -> {
                lines.set(at, lines.get(at).replaceFirst("T08:13:", "T08:1" + (4 + random.nextInt(6)) + ":"));
                return of("time", line + " at another time", line + " was changed", lines);
            }
            default -> {
                var beginning = new ArrayList<>(lines.subList(0, at + 1));
                beginning.add("");
                return of("tail", "everything from line " + next + " on", "lines " + next + " to ", beginning);
            }
        }
    }

    /** Any character of the file, its line feeds included, becomes another one. */
    private static Tampering anyCharacter(Random random, List<String> export) {
        String file = String.join("\n", export);
        int at = random.nextInt(file.length());
        while (Character.isSurrogate(file.charAt(at))) {
            at = random.nextInt(file.length());
        }
        char before = file.charAt(at);
        char after = (char) (' ' + random.nextInt(95));
        if (after == before) {
            after = before == 'x' ? 'y' : 'x';
        }
        long fileLine = file.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        String line = export.get((int) fileLine - 1);
        String named = isLine(line) ? " " + line.split(" ")[0] : "(line ";
        return new Tampering(
                "a byte",
                "'" + before + "' became '" + after + "' in line " + fileLine + " of the file: " + line,
                named,
                file.substring(0, at) + after + file.substring(at + 1));
    }

    private static Tampering of(String kind, String what, String named, List<String> lines) {
        return new Tampering(kind, what, named, String.join("\n", lines));
    }

    private static boolean isLine(String line) {
        return !line.isEmpty() && Character.isDigit(line.charAt(0));
    }
}
