package yardlight.gateway.fields;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Sent;
import yardlight.gateway.edit.SetupTree;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Opens forms on pieces of the setup, and stores what was typed into them. */
@Component
public class Forms {

    private final Desk desk;

    Forms(Desk desk) {
        this.desk = desk;
    }

    /**
     * A piece and its form.
     *
     * @param there the piece as it stands in a setup, or as it would begin
     */
    public record Wanted(Layout layout, Part part, Function<SetupTree, Node.Members> there) {}

    /** As the setup has it. */
    public Form open(Wanted wanted) {
        Desk.Look look = desk.look();
        return new Form(
                wanted.layout(),
                look.version(),
                wanted.layout().shown(wanted.there().apply(look.tree())),
                Notes.NONE,
                false);
    }

    /**
     * Stores what was typed, unless it is not right or somebody else has changed the same. Then the form has what was typed
     * and says why.
     *
     * @param sent by a browser; {@code seen} is the version that was looked at
     * @param by login of the person
     */
    public Form save(
            Wanted wanted, Map<String, String[]> sent, String by, Names names, Clockface clock, Tongue tongue) {
        Layout layout = wanted.layout();
        Values typed = Values.typed(sent);
        int seen = Sent.number(sent, "seen");
        Node.Members piece = wanted.there().apply(desk.look().tree());
        Map<String, String> wrong = layout.mistakes(typed, piece, tongue);
        if (!wrong.isEmpty()) {
            return new Form(layout, seen, typed, new Notes(wrong, List.of(), "", List.of()), false);
        }
        Piece wish = Piece.of(wanted.part(), layout.on(typed, piece));
        Saved saved = desk.save(seen, List.of(wish), by);
        if (saved instanceof Saved.Wrong mistaken) {
            return new Form(layout, seen, typed, notes(mistaken, wish, layout, tongue), false);
        }
        if (saved instanceof Saved.Overtaken other) {
            Notes notes = Notes.of(other, names, clock, tongue, "edits");
            return new Form(layout, other.version(), typed, notes, false);
        }
        return new Form(layout, seen, typed, Notes.NONE, true);
    }

    private static Notes notes(Saved.Wrong wrong, Piece wish, Layout layout, Tongue tongue) {
        var fields = new HashMap<String, String>();
        var whole = new ArrayList<String>();
        for (Saved.Mistake mistake : wrong.mistakes()) {
            boolean here = mistake.piece()
                    .filter(piece -> piece.part() == wish.part() && piece.key().equals(wish.key()))
                    .isPresent();
            Optional<String> near = here ? layout.near(mistake.field()) : Optional.empty();
            near.ifPresentOrElse(
                    field -> fields.putIfAbsent(field, rule(field, mistake.rule(), tongue)),
                    () -> whole.add(
                            mistake.piece().map(piece -> piece.key() + ": ").orElse("") + tongue.say(mistake.rule())));
        }
        return new Notes(Map.copyOf(fields), List.copyOf(whole), "", List.of());
    }

    /** A rule that has no words of its own in other languages is said as the form has it. */
    private static String rule(String field, Sentence rule, Tongue tongue) {
        String said = tongue.say(rule);
        return rule.code().isEmpty()
                ? tongue.words().getMessage("fields.wrong." + field.replace('/', '.'), null, said, tongue.locale())
                : said;
    }
}
