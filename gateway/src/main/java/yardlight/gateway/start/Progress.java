package yardlight.gateway.start;

import java.util.Arrays;
import java.util.Optional;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.SetupTree;

/**
 * How far somebody has come: the first person, site, box and ladder of the setup are those that are made here.
 *
 * @param heard whether that box ever posted
 * @param answered whether something ever proved that person's first line
 */
record Progress(
        int version,
        Optional<Piece> you,
        Optional<Piece> site,
        Optional<Piece> box,
        Optional<Piece> ladder,
        boolean heard,
        boolean answered) {

    static Progress of(Desk.Look look, boolean heard, boolean answered) {
        SetupTree tree = look.tree();
        return new Progress(
                look.version(),
                first(tree, Part.CONTACTS),
                first(tree, Part.SITES),
                first(tree, Part.BOXES),
                first(tree, Part.LADDERS),
                heard,
                answered);
    }

    static Optional<Piece> first(SetupTree tree, Part part) {
        return tree.all(part).stream().findFirst();
    }

    boolean done(Step step) {
        return switch (step) {
            case YOU -> you.isPresent();
            case SITE -> site.isPresent();
            case BOX -> box.isPresent() && heard;
            case LADDER -> ladder.filter(Progress::decided).isPresent();
            case TEST -> answered;
        };
    }

    /** Whether the steps before it are far enough that it can be done. */
    boolean open(Step step) {
        return switch (step) {
            case YOU -> true;
            case SITE -> you.isPresent();
            case BOX -> site.isPresent();
            case LADDER -> site.isPresent() && you.isPresent();
            case TEST -> you.isPresent();
        };
    }

    /** The first that is not done; the last one when all are. */
    Step next() {
        return Arrays.stream(Step.values())
                .filter(step -> !done(step))
                .findFirst()
                .orElse(Step.TEST);
    }

    /** The ladder that the site cannot do without comes with the site; how often it is climbed is said by a person. */
    private static boolean decided(Piece ladder) {
        return ladder.node().filter(node -> node.nodes().containsKey("again")).isPresent() || !simple(ladder);
    }

    /** Whether it is one rung with one call, as this makes it; any other is somebody's own, and left alone. */
    static boolean simple(Piece ladder) {
        return ladder.node()
                .map(node -> node.nodes().get("rungs"))
                .filter(rungs -> rungs instanceof Node.Items items
                        && items.nodes().size() == 1
                        && items.nodes().get(0) instanceof Node.Members rung
                        && rung.nodes().get("call") instanceof Node.Items call
                        && call.nodes().size() == 1)
                .isPresent();
    }
}
