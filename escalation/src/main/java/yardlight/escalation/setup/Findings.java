package yardlight.escalation.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.sentence.Sentence;

/** The mistakes found so far, and the rules that hold in more than one list. */
final class Findings {

    private final List<Mistake> mistakes = new ArrayList<>();
    private final Names names;

    Findings(Names names) {
        this.names = names;
    }

    Names names() {
        return names;
    }

    void add(String pointer, String code, String english, String... values) {
        mistakes.add(new Mistake(pointer, Sentence.of(code, english, (Object[]) values)));
    }

    List<Mistake> all() {
        return List.copyOf(mistakes);
    }

    void mustExist(String what, String name, Set<String> known, String pointer) {
        if (!known.contains(name)) {
            add(pointer, "must.exist", what + " must exist: " + name, what, name);
        }
    }

    <T> void mustBeUnique(String list, List<T> things, Function<T, String> id) {
        var seen = new HashSet<String>();
        for (int i = 0; i < things.size(); i++) {
            String one = id.apply(things.get(i));
            if (!seen.add(one)) {
                String english = "id must be unique in " + list + ": " + one;
                add("#/" + list + "/" + i + "/id", "must.be-unique", english, list, one);
            }
        }
    }

    /** A contact's id, or a roster's with the mark before it. */
    void mustBeSomebody(String name, String pointer) {
        if (name.startsWith(Rung.ROSTER)) {
            String roster = name.substring(Rung.ROSTER.length());
            mustExist("roster", roster, names.rosters(), pointer);
        } else {
            mustExist("contact", name, names.contacts(), pointer);
        }
    }
}
