package yardlight.gateway.fields;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardlight.gateway.document.Node;
import yardlight.gateway.page.Tongue;

/**
 * The fields of a form and where they stand in a piece of the setup. What the form does not show stays as it is, and what is
 * shown and not changed stays as it is written.
 */
public record Layout(List<Group> groups) {

    public Layout {
        groups = List.copyOf(groups);
    }

    public static Layout of(Group... groups) {
        return new Layout(List.of(groups));
    }

    /** What the form shows of a piece. */
    public Values shown(Node.Members piece) {
        var values = new HashMap<String, String>();
        groups.forEach(group -> values.putAll(group.shown(piece)));
        return new Values(values);
    }

    /** The piece with what was typed. */
    public Node.Members on(Values typed, Node.Members piece) {
        Node.Members made = piece;
        for (Group group : groups) {
            made = group.on(typed, made);
        }
        return made;
    }

    /** What cannot even be put into a setup, in words by the path of its field. */
    public Map<String, String> mistakes(Values typed, Node.Members piece, Tongue tongue) {
        var wrong = new TreeMap<String, String>();
        for (Group group : groups) {
            if (group.forgotten(typed, piece)) {
                wrong.put(group.asked().path(), tongue.say("fields.wrong.forgotten"));
            }
            for (Field field : group.counting(typed)) {
                if (!Script.good(field, typed)) {
                    wrong.put(field.path(), words(field, typed, tongue));
                }
            }
        }
        return wrong;
    }

    private static String words(Field field, Values typed, Tongue tongue) {
        return field.kind() == Kind.ROWS
                ? tongue.say(
                        "fields.wrong.rows", Script.badRow(typed.at(field.id())).orElse(1))
                : tongue.say("fields.wrong." + field.kind().word());
    }

    /** The field at which a mistake is shown: at that place of the piece, or around it; empty when there is none. */
    Optional<String> near(String place) {
        String at = place;
        while (!at.isEmpty()) {
            if (paths().anyMatch(at::equals)) {
                return Optional.of(at);
            }
            at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
        }
        return Optional.empty();
    }

    private Stream<String> paths() {
        return groups.stream()
                .flatMap(group -> Stream.concat(
                        group.way() == Group.Way.ANY
                                ? Stream.empty()
                                : Stream.of(group.asked().path()),
                        group.fields().stream().map(Field::path)));
    }
}
