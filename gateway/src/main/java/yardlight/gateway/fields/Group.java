package yardlight.gateway.fields;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Filling;

/**
 * Fields that belong together.
 *
 * @param name as the lists of words know it
 * @param member the object of the piece in which they stand; empty for the piece itself
 * @param way how it is said that the object is there at all
 * @param cases the words of which one is chosen, for {@link Way#CASE}
 * @param told those cases that are told by the member of their name and not by a word
 */
public record Group(
        String name,
        String member,
        Way way,
        String caseName,
        List<String> cases,
        Set<String> told,
        List<Field> fields) {

    /** How it is said that an object is there. */
    public enum Way {
        /** It is there when any of its fields is. */
        ANY,
        /** Somebody ticks it; then it may be empty. */
        TICKED,
        /** Somebody chooses a case of it. */
        CASE
    }

    public Group {
        cases = List.copyOf(cases);
        fields = List.copyOf(fields);
    }

    /** Fields of the piece itself. */
    public static Group of(String name, Field... fields) {
        return new Group(name, "", Way.ANY, "", List.of(), Set.of(), List.of(fields));
    }

    /** An object that is there when any of its fields is. */
    public static Group any(String member, Field... fields) {
        return new Group(member, member, Way.ANY, "", List.of(), Set.of(), List.of(fields));
    }

    /** An object that may be there without any field. */
    public static Group ticked(String member, Field... fields) {
        return new Group(member, member, Way.TICKED, "", List.of(), Set.of(), List.of(fields));
    }

    /** An object of which there are several cases. */
    public static Group cases(String member, String caseName, List<String> cases, Set<String> told, Field... fields) {
        return new Group(member, member, Way.CASE, caseName, cases, told, List.of(fields));
    }

    /** By which it is said that the object is there. */
    public Field asked() {
        return way == Way.CASE ? Field.choice(member + "/" + caseName) : Field.of(Kind.TICK, member);
    }

    /** What the form shows of it. */
    Map<String, String> shown(Node.Members piece) {
        Optional<Node.Members> there = inside(piece);
        var values = new LinkedHashMap<String, String>();
        for (Field field : fields) {
            values.putAll(Script.shown(field, node(there, field.name())).byId());
        }
        if (way != Way.ANY) {
            values.put(asked().id(), there.map(this::chosen).orElse(""));
        }
        return values;
    }

    private String chosen(Node.Members there) {
        if (way == Way.TICKED) {
            return "true";
        }
        return told.stream()
                .filter(there.nodes()::containsKey)
                .findFirst()
                .orElseGet(() -> Script.shown(Field.text(caseName), node(Optional.of(there), caseName))
                        .at(caseName));
    }

    /** Whether it is to be there, as far as somebody has to say so. */
    boolean on(Values typed) {
        return way == Way.ANY || !typed.at(asked().id()).isBlank();
    }

    /** Whether something holds when nothing is filled in: what is ticked, and what is usual in every field. */
    boolean hasUsual() {
        return way == Way.TICKED
                || way == Way.ANY
                        && fields.stream().noneMatch(field -> field.usual().isEmpty());
    }

    /** Those that count, in the case that was chosen. */
    List<Field> counting(Values typed) {
        String chosen = way == Way.CASE ? typed.at(asked().id()) : "";
        return !on(typed)
                ? List.of()
                : fields.stream()
                        .filter(field ->
                                field.cases().isEmpty() || field.cases().contains(chosen))
                        .toList();
    }

    /**
     * Whether somebody filled it in and did not say that it is to be there. Who takes away what was there leaves its fields
     * as they were.
     */
    boolean forgotten(Values typed, Node.Members piece) {
        return !on(typed) && inside(piece).isEmpty() && fields.stream().anyMatch(field -> !typed.blank(field));
    }

    /** The piece with what was typed. */
    Node.Members on(Values typed, Node.Members piece) {
        if (member.isEmpty()) {
            return filled(typed, piece);
        }
        Optional<Node.Members> before = inside(piece);
        Optional<Node.Members> made = on(typed)
                ? Optional.of(filled(typed, before.orElse(new Node.Members(Map.of()))))
                        .filter(inside ->
                                way != Way.ANY || !inside.nodes().isEmpty() || before.equals(Optional.of(inside)))
                : Optional.empty();
        return made.equals(before)
                ? piece
                : Filling.of(Optional.of(piece))
                        .node(member, made.map(Node.class::cast))
                        .done();
    }

    private Node.Members filled(Values typed, Node.Members object) {
        Filling filling = Filling.of(Optional.of(object));
        if (way == Way.CASE) {
            Field asked = new Field(member + "/" + caseName, Kind.TEXT, "", "", false, Set.of());
            filling.node(
                    caseName,
                    told.contains(typed.at(asked.id()))
                            ? Optional.empty()
                            : Script.node(asked, typed, node(Optional.of(object), caseName)));
        }
        var counting = new ArrayList<>(counting(typed));
        for (Field field : fields) {
            Optional<Node> before = node(Optional.of(object), field.name());
            filling.node(field.name(), counting.contains(field) ? Script.node(field, typed, before) : Optional.empty());
        }
        return filling.done();
    }

    private Optional<Node.Members> inside(Node.Members piece) {
        if (member.isEmpty()) {
            return Optional.of(piece);
        }
        return piece.nodes().get(member) instanceof Node.Members members ? Optional.of(members) : Optional.empty();
    }

    private static Optional<Node> node(Optional<Node.Members> object, String name) {
        return object.map(members -> members.nodes().get(name));
    }
}
