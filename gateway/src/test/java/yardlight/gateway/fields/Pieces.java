package yardlight.gateway.fields;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardlight.gateway.document.Node;

/** Pieces of a setup by chance, as somebody might have written them, and what a browser sends of a form. */
public final class Pieces {

    private final Random random;

    public Pieces(long seed) {
        random = new Random(seed);
    }

    public boolean perhaps() {
        return random.nextBoolean();
    }

    public int upTo(int most) {
        return random.nextInt(most);
    }

    @SafeVarargs
    public final <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }

    /** With one digit after the point, and written as a number or as a text. */
    public Node number(int least, int most) {
        return written((least * 10 + random.nextInt((most - least) * 10)) / 10.0);
    }

    private Node written(double number) {
        String text = random.nextInt(3) == 0 && number == Math.rint(number)
                ? Long.toString((long) number)
                : Double.toString(number);
        return random.nextInt(4) == 0 ? new Node.Text(text) : new Node.Number(text);
    }

    /** So many numbers that rise, above 0. */
    public List<Node> rising(int count) {
        var numbers = new TreeSet<Integer>();
        while (numbers.size() < count) {
            numbers.add(1 + random.nextInt(900));
        }
        return numbers.stream().map(one -> written(one / 10.0)).toList();
    }

    /** A length of time, as ISO 8601 lets it be written in several ways. */
    public Node span(int leastSeconds, int mostSeconds) {
        int seconds = leastSeconds + random.nextInt(mostSeconds - leastSeconds + 1);
        String text = one(
                "PT" + seconds + "S",
                "PT" + seconds / 3600 + "H" + seconds % 3600 / 60 + "M" + seconds % 60 + "S",
                "P" + seconds / 86_400 + "DT" + seconds % 86_400 + "S",
                "PT" + Math.max(leastSeconds, seconds - seconds % 60) + "S");
        return new Node.Text(text);
    }

    public static Node text(String text) {
        return new Node.Text(text);
    }

    public static Node list(List<Node> items) {
        return new Node.Items(items);
    }

    /** An object of some of these members, in any order; of all of them when all is true. */
    public Node.Members some(Map<String, Node> members, boolean all) {
        var names = new ArrayList<>(new TreeSet<>(members.keySet()));
        java.util.Collections.shuffle(names, random);
        var kept = new LinkedHashMap<String, Node>();
        names.stream().filter(name -> all || random.nextInt(3) > 0).forEach(name -> kept.put(name, members.get(name)));
        return new Node.Members(kept);
    }

    /** What a browser sends of a form that nobody touched: every field that is shown, ticks only when they are ticked. */
    public static Map<String, String[]> sent(Values shown) {
        var sent = new HashMap<String, String[]>();
        shown.byId().forEach((id, text) -> sent.put(id, new String[] {text.replace("\n", "\r\n")}));
        sent.values().removeIf(texts -> texts[0].isEmpty());
        return sent;
    }

    /** All fields of a form that the setup knows, with its switches. */
    public static List<String> paths(Layout layout) {
        return layout.groups().stream()
                .flatMap(group -> java.util.stream.Stream.concat(
                        group.fields().stream().map(Field::path),
                        group.way() == Group.Way.CASE
                                        && group.told().size() < group.cases().size()
                                ? java.util.stream.Stream.of(group.asked().path())
                                : java.util.stream.Stream.empty()))
                .sorted()
                .collect(Collectors.toList());
    }
}
