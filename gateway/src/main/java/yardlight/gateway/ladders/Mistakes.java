package yardlight.gateway.ladders;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * What is wrong, in words.
 *
 * @param fields by the name of the input that it stands beside
 * @param others what belongs to no input of the form
 */
record Mistakes(Map<String, String> fields, List<String> others) {

    static final Mistakes NONE = new Mistakes(Map.of(), List.of());

    private static final Pattern RUNG = Pattern.compile("rungs/(\\d+)/(call|wait|rounds)(?:/.*)?");
    private static final Set<String> OWN = Set.of("again", "endsWhen");

    Mistakes {
        fields = Map.copyOf(fields);
        others = List.copyOf(others);
    }

    static Mistakes of(LadderForm form, List<Saved.Mistake> found, Setup setup, Tongue tongue) {
        var fields = new LinkedHashMap<String, String>();
        var others = new ArrayList<String>();
        for (Saved.Mistake mistake : found) {
            Optional<String> field = mistake.piece()
                    .filter(piece -> piece.part() == Part.LADDERS && piece.key().equals(form.id()))
                    .flatMap(piece -> field(form, mistake.field()));
            field.ifPresentOrElse(
                    name -> fields.putIfAbsent(name, tongue.say("ladders.wrong." + name.split("-")[0])),
                    () -> others.add(other(mistake, form, setup, tongue)));
        }
        return new Mistakes(fields, others);
    }

    private static Optional<String> field(LadderForm form, String field) {
        Matcher rung = RUNG.matcher(field);
        if (rung.matches()) {
            int place = Integer.parseInt(rung.group(1));
            return Optional.of(rung.group(2) + "-" + form.rungs().get(place).key());
        }
        return Optional.of(field).filter(OWN::contains);
    }

    private static String other(Saved.Mistake mistake, LadderForm form, Setup setup, Tongue tongue) {
        if (mistake.field().equals("rungs")) {
            return tongue.say("ladders.wrong.rungs");
        }
        Optional<String> site = mistake.piece()
                .filter(piece -> piece.part() == Part.SITES && mistake.field().equals("ladder"))
                .map(Piece::key);
        return site.map(id -> tongue.say("ladders.used", new Names(setup).site(id), form.id()))
                .orElseGet(() -> mistake.piece().map(Piece::key).orElse("") + " " + mistake.field() + ": "
                        + tongue.say(mistake.rule()));
    }

    /** With what is wrong with the question. */
    Mistakes and(Map<String, String> asked, Tongue tongue) {
        var more = new LinkedHashMap<>(fields);
        asked.forEach((field, key) -> more.put(field, tongue.say("ladders.wrong." + key)));
        return new Mistakes(more, others);
    }

    boolean none() {
        return fields.isEmpty() && others.isEmpty();
    }

    List<String> all() {
        var all = new ArrayList<>(others);
        fields.values().stream().distinct().forEach(all::add);
        return all;
    }
}
