package yardlight.gateway.document;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One object of a document. Each method gives a field as the type that is wanted; a field that is absent, {@code null}
 * or wrong gives nothing, and what is wrong is noted with its pointer. So a reader goes on to the end and finds
 * every mistake, not only the first.
 */
public final class Fields {

    private static final Set<String> SECRETS = Set.of("password");
    private static final int SHOWN = 40;

    private final Map<String, Node> members;
    private final String pointer;
    private final Faults faults;
    private final Typing typing;
    private final boolean anObject;
    private final Set<String> asked = new LinkedHashSet<>();

    Fields(Node node, String pointer, Faults faults, Typing typing) {
        this.pointer = pointer;
        this.faults = faults;
        this.typing = typing;
        this.anObject = node instanceof Node.Members;
        if (node instanceof Node.Members object) {
            members = object.nodes();
        } else {
            members = Map.of();
            faults.add(pointer, "must be an object");
        }
    }

    /** Where a field of this object stands, whether or not it is there. */
    public String pointer(String name) {
        return Pointers.member(pointer, name);
    }

    public void fault(String name, String detail) {
        faults.add(pointer(name), detail);
    }

    /** Notes a fault when the field is not there at all. */
    public Fields needs(String... names) {
        for (String name : names) {
            if (node(name).isEmpty() && anObject) {
                fault(name, "must be there");
            }
        }
        return this;
    }

    public boolean has(String name) {
        return node(name).isPresent();
    }

    /** A text of one line. */
    public Optional<String> text(String name, int most) {
        return written(name, "must be a text").map(Texts::oneLine).flatMap(text -> {
            if (Texts.broken(text)) {
                return wrong(name, "must not hold control characters");
            }
            return Texts.length(text) > most
                    ? wrong(name, "must be at most " + most + " characters")
                    : Optional.of(text);
        });
    }

    /** A text that means something; {@code rule} says what it must be. */
    public <T> Optional<T> as(String name, String rule, Function<String, Optional<T>> meaning) {
        return written(name, rule).flatMap(text -> {
            Optional<T> value = meant(text, meaning);
            return value.isPresent() ? value : wrong(name, rule);
        });
    }

    private static <T> Optional<T> meant(String text, Function<String, Optional<T>> meaning) {
        try {
            return meaning.apply(text);
        } catch (DateTimeException | ArithmeticException e) {
            return Optional.empty();
        }
    }

    public Optional<Instant> instant(String name) {
        return as(name, "must be an RFC 3339 time such as 2026-11-25T02:13:00Z", Rfc3339::instant);
    }

    public Optional<Duration> duration(String name) {
        return as(name, "must be an ISO 8601 duration such as PT5M", text -> Optional.of(Duration.parse(text)));
    }

    /** A duration within bounds, both included. */
    public Optional<Duration> duration(String name, Duration least, Duration most) {
        return duration(name)
                .flatMap(length -> length.compareTo(least) < 0 || length.compareTo(most) > 0
                        ? wrong(name, "must be from " + least + " to " + most)
                        : Optional.of(length));
    }

    public Optional<BigDecimal> number(String name) {
        return node(name).flatMap(node -> {
            Optional<BigDecimal> number = typing.number(node).flatMap(Numbers::of);
            return number.isPresent()
                    ? number
                    : wrong(name, "must be a number of at most 18 digits, 9 of them after the point");
        });
    }

    public Optional<Integer> whole(String name, int least, int most) {
        return node(name).flatMap(node -> {
            Optional<Integer> number = typing.number(node)
                    .filter(text -> text.matches("-?\\d{1,9}"))
                    .map(Integer::valueOf)
                    .filter(value -> value >= least && value <= most);
            return number.isPresent() ? number : wrong(name, "must be a whole number from " + least + " to " + most);
        });
    }

    public Optional<Boolean> flag(String name) {
        return node(name).flatMap(node -> {
            Optional<Boolean> flag = typing.flag(node);
            return flag.isPresent() ? flag : wrong(name, "must be true or false");
        });
    }

    /** The names and values of a member that is an object itself. */
    public Optional<Fields> object(String name) {
        return node(name).map(node -> new Fields(node, pointer(name), faults, typing));
    }

    /** A member as a document of its own, whose pointers begin there. */
    public Optional<Document> part(String name) {
        return node(name).map(node -> new Document(node, List.of(), typing.loose()));
    }

    public Set<String> names() {
        asked.addAll(members.keySet());
        return members.keySet();
    }

    /** The objects in a list. */
    public List<Fields> objects(String name) {
        var objects = new ArrayList<Fields>();
        for (Node item : items(name)) {
            objects.add(new Fields(item, pointer(name) + "/" + objects.size(), faults, typing));
        }
        return objects;
    }

    /** The texts in a list; what is none is noted, and empty in its place, so that the places stay right. */
    public List<String> texts(String name) {
        var texts = new ArrayList<String>();
        for (Node item : items(name)) {
            Optional<String> text = typing.text(item).filter(value -> !Texts.broken(value));
            if (text.isEmpty()) {
                faults.add(pointer(name) + "/" + texts.size(), "must be a text");
            }
            texts.add(text.orElse(""));
        }
        return texts;
    }

    /** The pairs of numbers in a list, such as {@code [[1, 20], [2, 41]]}; what is none is noted and left out. */
    public List<List<BigDecimal>> pairs(String name) {
        var pairs = new ArrayList<List<BigDecimal>>();
        int place = 0;
        for (Node item : items(name)) {
            List<BigDecimal> numbers = item instanceof Node.Items list
                    ? list.nodes().stream()
                            .flatMap(node -> typing.number(node).flatMap(Numbers::of).stream())
                            .toList()
                    : List.of();
            if (numbers.size() == 2 && ((Node.Items) item).nodes().size() == 2) {
                pairs.add(numbers);
            } else {
                faults.add(pointer(name) + "/" + place, "must be two numbers such as [1, 20.5]");
            }
            place++;
        }
        return pairs;
    }

    private List<Node> items(String name) {
        Optional<Node> node = node(name);
        if (node.isPresent() && node.get() instanceof Node.Items list) {
            return list.nodes();
        }
        node.ifPresent(other -> fault(name, "must be a list"));
        return List.of();
    }

    /** Notes every field that nobody asked for. */
    public void nothingElse() {
        for (String name : members.keySet()) {
            if (!asked.contains(name)) {
                fault(name, "is not known here; known are " + String.join(", ", asked));
            }
        }
    }

    private Optional<Node> node(String name) {
        asked.add(name);
        return Optional.ofNullable(members.get(name)).filter(node -> !(node instanceof Node.Nothing));
    }

    private Optional<String> written(String name, String rule) {
        return node(name).flatMap(node -> {
            Optional<String> text = typing.text(node);
            return text.isPresent() ? text : wrong(name, rule);
        });
    }

    private <T> Optional<T> wrong(String name, String rule) {
        fault(name, rule + shown(name));
        return Optional.empty();
    }

    /** What was there instead, so that whoever reads the answer need not look into the request. */
    private String shown(String name) {
        Node node = members.get(name);
        if (SECRETS.contains(name)) {
            return "";
        }
        if (node instanceof Node.Text text) {
            return ": " + Texts.shortened(text.value(), SHOWN);
        }
        if (node instanceof Node.Number number) {
            return ": " + Texts.shortened(number.written(), SHOWN);
        }
        return node instanceof Node.Flag flag ? ": " + flag.value() : "";
    }
}
