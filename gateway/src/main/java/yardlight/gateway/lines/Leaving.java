package yardlight.gateway.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Filling;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.SetupTree;

/**
 * What it takes to take a contact out of a setup: they leave the ladders and rosters as well, unless they are the last on a
 * rung or in a roster. A ladder that nobody is left on would call nobody, and a roster would have no turns.
 *
 * @param wishes the setup without them; empty when something is in the way
 * @param ways where they are taken off
 * @param reasons why not
 */
record Leaving(List<Piece> wishes, List<Place> ways, List<Place> reasons) {

    private static final String CALL = "call";
    private static final String ORDER = "order";
    private static final String RELIEFS = "reliefs";

    /**
     * Where somebody is called.
     *
     * @param rung from 1 on; 0 for a roster
     */
    record Place(Part part, String id, int rung) {}

    static Leaving of(SetupTree tree, String contact) {
        var wishes = new ArrayList<>(List.of(Piece.none(Part.CONTACTS, contact)));
        var ways = new ArrayList<Place>();
        var reasons = new ArrayList<Place>();
        tree.all(Part.LADDERS).forEach(ladder -> ladder(ladder, contact, wishes, ways, reasons));
        tree.all(Part.ROSTERS).forEach(roster -> roster(roster, contact, wishes, ways, reasons));
        boolean alone = tree.all(Part.CONTACTS).size() == 1;
        if (alone && reasons.isEmpty()) {
            tree.all(Part.LADDERS).forEach(ladder -> reasons.add(new Place(Part.LADDERS, ladder.key(), 1)));
        }
        return new Leaving(reasons.isEmpty() ? List.copyOf(wishes) : List.of(), ways, reasons);
    }

    private static void ladder(
            Piece ladder, String contact, List<Piece> wishes, List<Place> ways, List<Place> reasons) {
        List<Filled> rungs = Filled.of(ladder).each("rungs");
        List<Integer> on = IntStream.range(0, rungs.size())
                .filter(i -> rungs.get(i).texts(CALL).contains(contact))
                .boxed()
                .toList();
        for (int place : on) {
            boolean last = without(rungs.get(place).texts(CALL), contact).isEmpty();
            (last ? reasons : ways).add(new Place(Part.LADDERS, ladder.key(), place + 1));
        }
        if (!on.isEmpty()) {
            List<Node.Members> left = rungs.stream()
                    .map(rung -> Filling.of(Optional.of(rung.members()))
                            .texts(CALL, without(rung.texts(CALL), contact))
                            .done())
                    .toList();
            wishes.add(changed(ladder, filling -> filling.each("rungs", left, true)));
        }
    }

    private static void roster(
            Piece roster, String contact, List<Piece> wishes, List<Place> ways, List<Place> reasons) {
        Filled filled = Filled.of(roster);
        List<String> order = without(filled.texts(ORDER), contact);
        List<Node.Members> reliefs = filled.each(RELIEFS).stream()
                .filter(relief -> !relief.text("contact").equals(contact))
                .map(Filled::members)
                .toList();
        boolean inOrder = order.size() < filled.texts(ORDER).size();
        if (inOrder || reliefs.size() < filled.each(RELIEFS).size()) {
            (order.isEmpty() ? reasons : ways).add(new Place(Part.ROSTERS, roster.key(), 0));
            wishes.add(changed(roster, filling -> filling.texts(ORDER, order).each(RELIEFS, reliefs, false)));
        }
    }

    private static Piece changed(Piece piece, UnaryOperator<Filling> change) {
        return Piece.of(piece.part(), change.apply(Filling.of(piece.node())).done());
    }

    private static List<String> without(List<String> names, String contact) {
        return names.stream().filter(name -> !name.equals(contact)).toList();
    }
}
