package yardlight.gateway.ladders;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.util.MultiValueMap;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;

/**
 * A ladder as it stands in the form, right or wrong.
 *
 * @param seen the version of the setup that was looked at
 */
record LadderForm(String id, int seen, String endsWhen, String again, List<RungForm> rungs) {

    /** Of the hidden field that says that the rungs come along: who may not edit sends none. */
    static final String EDITED = "edited";

    private static final int MOST_RUNGS = 100;
    private static final int MOST_CALLS = 100;
    private static final int LONGEST = 200;

    private static final String ENDS_WHEN = "endsWhen";
    private static final String AGAIN = "again";
    private static final String RUNGS = "rungs";
    private static final String ACKNOWLEDGED = "acknowledged";

    LadderForm {
        rungs = List.copyOf(rungs);
    }

    /** A new one, with a rung that calls nobody yet. */
    static LadderForm fresh(String id, int seen) {
        return new LadderForm(id, seen, ACKNOWLEDGED, "0", List.of(RungForm.fresh("n0")));
    }

    static LadderForm of(Node.Members ladder, String id, int seen) {
        var rungs = new ArrayList<RungForm>();
        rungs(ladder).forEach((key, rung) -> rungs.add(RungForm.of(key, rung)));
        return new LadderForm(
                id,
                seen,
                RungForm.member(ladder, ENDS_WHEN).orElse(ACKNOWLEDGED),
                RungForm.member(ladder, AGAIN).orElse("0"),
                rungs);
    }

    /** As it was sent. */
    static LadderForm read(String id, MultiValueMap<String, String> sent) {
        List<RungForm> rungs = sent.getOrDefault("rung", List.of()).stream()
                .filter(key -> key.matches("n?\\d{1,6}"))
                .distinct()
                .limit(MOST_RUNGS)
                .map(key -> new RungForm(
                        key,
                        sent.getOrDefault("call-" + key, List.of()).stream()
                                .limit(MOST_CALLS)
                                .map(LadderForm::bounded)
                                .toList(),
                        field(sent, "wait-" + key),
                        field(sent, "rounds-" + key),
                        !field(sent, "ask-" + key).isEmpty()))
                .toList();
        return new LadderForm(id, seen(sent), field(sent, ENDS_WHEN), field(sent, AGAIN), rungs);
    }

    static int seen(MultiValueMap<String, String> sent) {
        String seen = field(sent, "seen");
        return seen.matches("\\d{1,9}") ? Integer.parseInt(seen) : 0;
    }

    static String field(MultiValueMap<String, String> sent, String name) {
        return bounded(Optional.ofNullable(sent.getFirst(name)).orElse("").strip());
    }

    private static String bounded(String text) {
        return text.substring(0, Math.min(LONGEST, text.length()));
    }

    /**
     * As it is to stand in the setup.
     *
     * @param was the ladder that the form was made from; nothing when it is new
     */
    Piece piece(Piece was) {
        Node.Members before = was.node().orElse(new Node.Members(Map.of()));
        Map<String, Node.Members> rungsBefore = rungs(before);
        Map<String, Node> members = new LinkedHashMap<>();
        members.put("id", new Node.Text(id));
        members.putAll(before.nodes());
        if (!RungForm.member(before, ENDS_WHEN).orElse(ACKNOWLEDGED).equals(endsWhen)) {
            members.put(ENDS_WHEN, new Node.Text(endsWhen));
        }
        members.put(
                RUNGS,
                new Node.Items(rungs.stream()
                        .map(rung -> (Node) rung.node(rungsBefore.getOrDefault(rung.key(), new Node.Members(Map.of()))))
                        .toList()));
        if (!RungForm.member(before, AGAIN).orElse("0").equals(again)) {
            members.put(AGAIN, RungForm.number(again));
        }
        return new Piece(Part.LADDERS, id, Optional.of(new Node.Members(members)));
    }

    /** By the key that the form gives each: its place. */
    private static Map<String, Node.Members> rungs(Node.Members ladder) {
        var rungs = new LinkedHashMap<String, Node.Members>();
        if (ladder.nodes().get(RUNGS) instanceof Node.Items items) {
            for (int i = 0; i < items.nodes().size(); i++) {
                if (items.nodes().get(i) instanceof Node.Members rung) {
                    rungs.put(Integer.toString(i), rung);
                }
            }
        }
        return rungs;
    }

    LadderForm with(List<RungForm> next) {
        return new LadderForm(id, seen, endsWhen, again, next);
    }

    LadderForm seen(int version) {
        return new LadderForm(id, version, endsWhen, again, rungs);
    }
}
