package yardlight.gateway.edit;

import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.NoSuchMessageException;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * Says in words what an edit changed.
 *
 * @param setup knows the names of people
 * @param addresses whether whoever looks may see the addresses of lines
 */
public record Telling(Tongue tongue, Setup setup, boolean addresses) {

    private static final Set<String> PEOPLE = Set.of("call", "order", "contact");
    private static final String LINES = "lines";

    /** {@code Ladder night}. */
    public String name(Saved.Changed changed) {
        return tongue.say("edits.part." + changed.part().word(), changed.key());
    }

    /** {@code rung 2, wait: 5 min → 10 min}; for each thing that differs one. */
    public List<String> differences(Saved.Changed changed) {
        return changed.differences().stream().map(this::words).toList();
    }

    private String words(Difference difference) {
        if (difference.field().isEmpty()) {
            return tongue.say(difference.after().isEmpty() ? "edits.gone" : "edits.new");
        }
        String where = where(difference.field());
        if (!addresses && difference.field().split("/")[0].equals(LINES)) {
            return tongue.say("edits.hidden", where);
        }
        String last = difference.field().replaceAll("(/\\d+)+$", "").replaceAll(".*/", "");
        String before = value(last, difference.before());
        String after = value(last, difference.after());
        if (before.isEmpty()) {
            return tongue.say("edits.added", where, after);
        }
        return after.isEmpty()
                ? tongue.say("edits.removed", where, before)
                : tongue.say("edits.changed", where, before, after);
    }

    /** {@code rungs/2/wait} as {@code rung 2, wait}. */
    private String where(String field) {
        var words = new ArrayList<String>();
        List<String> steps = Arrays.asList(field.split("/"));
        for (int i = 0; i < steps.size(); i++) {
            boolean item = i + 1 < steps.size() && steps.get(i + 1).matches("\\d+");
            words.add(
                    item ? known("edits.item.", steps.get(i), steps.get(i + 1)) : known("edits.field.", steps.get(i)));
            i += item ? 1 : 0;
        }
        return String.join(", ", words);
    }

    private String known(String list, String name, Object... values) {
        try {
            return tongue.say(list + name, values);
        } catch (NoSuchMessageException unknown) {
            return values.length == 0 ? name : name + " " + values[0];
        }
    }

    private String value(String field, String value) {
        return PEOPLE.contains(field)
                ? Arrays.stream(value.split(", ")).map(this::person).collect(Collectors.joining(", "))
                : length(value);
    }

    /** Whom an entry of a rung or of a roster means: a name, {@code on call: crew}, {@code everyone}. */
    public String person(String call) {
        if (call.equals(Rung.EVERYONE)) {
            return tongue.say("edits.everyone");
        }
        return call.startsWith(Rung.ROSTER)
                ? tongue.say("edits.roster", call.substring(Rung.ROSTER.length()))
                : new Names(setup).contact(call);
    }

    /** A length of time as people write it; anything else as it is. */
    private static String length(String value) {
        if (!value.startsWith("P")) {
            return value;
        }
        try {
            return length(Duration.parse(value));
        } catch (DateTimeParseException notOne) {
            return value;
        }
    }

    /** {@code 1 h 30 min}, {@code 7 d}; {@code 0 s} for none. */
    public static String length(Duration length) {
        var words = new ArrayList<String>();
        add(words, length.toDays(), "d");
        add(words, length.toHoursPart(), "h");
        add(words, length.toMinutesPart(), "min");
        add(words, length.toSecondsPart(), "s");
        return words.isEmpty() ? "0 s" : String.join(" ", words);
    }

    private static void add(List<String> words, long count, String unit) {
        if (count != 0) {
            words.add(count + " " + unit);
        }
    }
}
