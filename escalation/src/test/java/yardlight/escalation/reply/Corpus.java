package yardlight.escalation.reply;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Replies with what a careful person takes them for; made up by somebody who had not seen how they are read. */
final class Corpus {

    /** @param remark what is special about it, and where it stands */
    record Entry(Said meant, String text, String remark) {}

    private Corpus() {}

    static List<Entry> read(String name) {
        try (var in = Corpus.class.getResourceAsStream(name)) {
            return entries(name, new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Entry> entries(String name, String[] lines) {
        var entries = new ArrayList<Entry>();
        int at = 0;
        while (at < lines.length && !lines[at].startsWith("===")) {
            at++;
        }
        while (at < lines.length) {
            String head = lines[at].substring(3);
            int from = at + 1;
            at = from;
            while (at < lines.length && !lines[at].startsWith("=== ")) {
                at++;
            }
            String text = String.join("\n", List.of(lines).subList(from, at));
            entries.add(new Entry(meant(head.split("#", 2)[0].strip()), text, name + ":" + from + head));
        }
        return entries;
    }

    private static Said meant(String words) {
        List<String> all = List.of(words.split("\\s+"));
        List<String> rest = all.subList(1, all.size());
        return switch (all.get(0)) {
            case "ok" -> new Said.Ok(rest.stream().map(Integer::valueOf).toList());
            case "all" -> new Said.All();
            case "hold" ->
                new Said.Hold(
                        numbers(rest).findFirst(),
                        rest.stream()
                                .filter(word -> word.startsWith("P"))
                                .map(Duration::parse)
                                .findFirst());
            case "status" -> new Said.Status();
            case "who" -> new Said.Who();
            case "help" -> new Said.Help();
            case "stop" -> new Said.Stop();
            case "start" -> new Said.Start();
            case "automatic" -> new Said.Automatic();
            case "unclear" -> new Said.Unclear();
            default -> throw new IllegalArgumentException("no such meaning: " + words);
        };
    }

    private static Stream<Integer> numbers(List<String> words) {
        return words.stream().filter(word -> Character.isDigit(word.charAt(0))).map(Integer::valueOf);
    }

    /** For what an alarm would be taken as seen, or put away; empty when it is left as it is. */
    static Optional<Said> effect(Said said) {
        return said instanceof Said.Ok || said instanceof Said.All || said instanceof Said.Hold
                ? Optional.of(said)
                : Optional.empty();
    }
}
