package yardlight.gateway.turns;

import java.util.ArrayList;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Filling;
import yardlight.gateway.edit.Piece;

/**
 * A swap as a form holds it, with whatever was typed.
 *
 * @param seen version of the setup that was looked at
 * @param from local to the roster, as the setup has it
 * @param to the same
 * @param contact who stands in
 */
record SwapForm(int seen, String from, String to, String contact) {

    private static final String RELIEFS = "reliefs";

    /** The roster with this swap, which holds over those before it. */
    Piece added(Piece roster) {
        var reliefs = new ArrayList<>(
                Filled.of(roster).each(RELIEFS).stream().map(Filled::members).toList());
        reliefs.add(Filling.of(Optional.empty())
                .text("from", from)
                .text("to", to)
                .text("contact", contact)
                .done());
        return with(roster, reliefs.stream());
    }

    /** The roster without this swap. */
    Piece taken(Piece roster) {
        return with(
                roster,
                Filled.of(roster).each(RELIEFS).stream()
                        .filter(relief -> !isThis(relief))
                        .map(Filled::members));
    }

    /** Whatever way its times are written: {@code 07:00} is {@code 07:00:00}. */
    private boolean isThis(Filled relief) {
        return contact.equals(relief.text("contact"))
                && Times.same(from, relief.text("from"))
                && Times.same(to, relief.text("to"));
    }

    private static Piece with(Piece roster, Stream<Node.Members> reliefs) {
        return Piece.of(
                roster.part(),
                Filling.of(roster.node()).each(RELIEFS, reliefs.toList(), false).done());
    }
}
