package yardlight.gateway.fields;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Tongue;

/**
 * Puts a form into words, for the template {@code form}.
 *
 * @param units what stands beside the fields of each {@link Field#unit()}; of others there are words in {@code fields.in}
 * @param choices by the path of the field
 */
public record Faces(Form form, Tongue tongue, Map<String, String> units, Map<String, List<Choice>> choices) {

    private static final List<String> COUNTED = List.of(Span.SECONDS, Span.MINUTES, Span.HOURS, Span.DAYS);
    private static final Set<Kind> WRITTEN = Set.of(Kind.TEXT, Kind.NUMBER, Kind.SPAN, Kind.CHOICE);

    /** What can be chosen. */
    public record Choice(String value, String words) {}

    /**
     * A field.
     *
     * @param kind the word of its {@link Kind}
     * @param unit what stands beside it; may be empty
     * @param counted what is counted, of a length of time
     * @param usual what holds while it is empty; may be empty
     * @param wrong what is wrong with it; empty when nothing is
     * @param mode the keys that a telephone shows for it
     * @param cases those in which it counts, with a blank between them; empty for all
     */
    public record Face(
            String id,
            String kind,
            String label,
            String value,
            String unit,
            String counted,
            String usual,
            String wrong,
            String mode,
            String cases,
            List<Choice> choices) {}

    /**
     * A group of fields.
     *
     * @param what it is for; may be empty
     * @param brief what is in it, so that it need not be opened for that
     * @param open because something in it is wrong
     * @param asked says whether the group is there at all
     */
    public record Fold(
            String name,
            String title,
            String what,
            String brief,
            boolean open,
            Optional<Face> asked,
            List<Face> faces) {}

    /** The group of this name. */
    public Fold fold(String name) {
        return folds().stream()
                .filter(fold -> fold.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("group must be of the form: " + name));
    }

    public List<Fold> folds() {
        return form.layout().groups().stream().map(this::fold).toList();
    }

    private Fold fold(Group group) {
        List<Face> faces = group.fields().stream().map(this::face).toList();
        Optional<Face> asked = group.way() == Group.Way.ANY ? Optional.empty() : Optional.of(asked(group));
        boolean wrong = Stream.concat(asked.stream(), faces.stream())
                .anyMatch(face -> !face.wrong().isEmpty());
        return new Fold(
                group.name(),
                tongue.say("fields.group." + group.name()),
                said("fields.group." + group.name() + ".what"),
                brief(group),
                wrong,
                asked,
                faces);
    }

    /** {@code high-high 18 ft, high 16 ft}. */
    private String brief(Group group) {
        String chosen = group.way() == Group.Way.CASE && group.on(form.values())
                ? caseWords(group, form.values().at(group.asked().id()))
                : "";
        String filled = group.counting(form.values()).stream()
                .filter(field ->
                        WRITTEN.contains(field.kind()) && !form.values().blank(field))
                .map(this::brief)
                .collect(Collectors.joining(", "));
        String all = Stream.of(chosen, filled).filter(text -> !text.isEmpty()).collect(Collectors.joining(": "));
        boolean bare = all.isEmpty() && group.on(form.values()) && group.hasUsual();
        return bare ? tongue.say("fields.as-usual") : all.isEmpty() ? tongue.say("fields.none") : all;
    }

    private String brief(Field field) {
        String value = form.values().at(field.id()).strip();
        String unit = field.kind() == Kind.SPAN ? tongue.say("fields.counted.short." + counted(field)) : unit(field);
        return tongue.say("edits.field." + field.name()) + " " + value + (unit.isEmpty() ? "" : " " + unit);
    }

    private Face asked(Group group) {
        Face face = face(group.asked());
        return group.way() == Group.Way.CASE
                ? with(
                        face,
                        Stream.concat(Stream.of(""), group.cases().stream())
                                .map(one -> new Choice(one, caseWords(group, one)))
                                .toList())
                : face;
    }

    private String caseWords(Group group, String one) {
        return tongue.say("fields.case." + group.name() + (one.isEmpty() ? "" : "." + one));
    }

    private static Face with(Face face, List<Choice> offered) {
        return new Face(
                face.id(),
                face.kind(),
                face.label(),
                face.value(),
                face.unit(),
                face.counted(),
                face.usual(),
                face.wrong(),
                face.mode(),
                face.cases(),
                offered);
    }

    private Face face(Field field) {
        String value = form.values().at(field.id());
        return new Face(
                field.id(),
                field.kind().word(),
                tongue.say("fields." + field.path().replace('/', '.')),
                value,
                unit(field),
                field.kind() == Kind.SPAN ? counted(field) : "",
                usual(field),
                form.notes().at(field.path()),
                mode(field),
                field.cases().stream().sorted().collect(Collectors.joining(" ")),
                offered(field, value));
    }

    /** What stands there can be chosen, whatever is offered. */
    private List<Choice> offered(Field field, String value) {
        if (field.kind() == Kind.SPAN) {
            return COUNTED.stream()
                    .map(unit -> new Choice(unit, tongue.say("fields.counted." + unit)))
                    .toList();
        }
        List<Choice> offered = choices.getOrDefault(field.path(), List.of());
        boolean known =
                value.isEmpty() || offered.stream().anyMatch(one -> one.value().equals(value));
        return known
                ? offered
                : Stream.concat(offered.stream(), Stream.of(new Choice(value, value)))
                        .toList();
    }

    private String counted(Field field) {
        String unit = form.values().span(field.id()).unit();
        return COUNTED.contains(unit) ? unit : Span.MINUTES;
    }

    private String unit(Field field) {
        return field.unit().isEmpty()
                ? ""
                : Optional.ofNullable(units.get(field.unit())).orElseGet(() -> tongue.say("fields.in." + field.unit()));
    }

    private String usual(Field field) {
        if (field.usual().isEmpty()) {
            return "";
        }
        String value =
                field.kind() == Kind.SPAN ? Telling.length(java.time.Duration.parse(field.usual())) : field.usual();
        return tongue.say("fields.usual", value);
    }

    /** The keys for numbers have no minus on some telephones. */
    private static String mode(Field field) {
        return field.kind() == Kind.SPAN || field.kind() == Kind.NUMBER && !field.signed() ? "decimal" : "text";
    }

    private String said(String key) {
        return tongue.words().getMessage(key, null, "", tongue.locale());
    }
}
