package yardlight.gateway.ladders;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;

/**
 * One rung as it stands in the form.
 *
 * @param key by which the form tells it from the others, wherever it is moved
 * @param call whom it calls; an empty text is a place that nobody has been chosen for
 * @param pause how long it waits, as {@link Wait} shows it
 * @param asks whether it asks the site to shut in
 */
record RungForm(String key, List<String> call, String pause, String rounds, boolean asks) {

    private static final String CALL = "call";
    private static final String WAIT = "wait";
    private static final String ROUNDS = "rounds";
    private static final String ASK = "ask";
    private static final String SHUT_IN = "shut-in";
    private static final String USUAL_WAIT = "PT5M";
    private static final String ONCE = "1";

    RungForm {
        call = List.copyOf(call);
    }

    static RungForm fresh(String key) {
        return new RungForm(key, List.of(""), Wait.shown(USUAL_WAIT), ONCE, false);
    }

    static RungForm of(String key, Node.Members rung) {
        List<String> call = rung.nodes().get(CALL) instanceof Node.Items items
                ? items.nodes().stream().map(RungForm::text).toList()
                : List.of("");
        return new RungForm(
                key,
                call,
                Wait.shown(member(rung, WAIT).orElse(USUAL_WAIT)),
                member(rung, ROUNDS).orElse(ONCE),
                member(rung, ASK).isPresent());
    }

    /**
     * As it is to stand in the setup.
     *
     * @param was the rung that it was made from; what says the same stays as it is written there
     */
    Node.Members node(Node.Members was) {
        Map<String, Node> members = new LinkedHashMap<>(was.nodes());
        members.put(
                CALL,
                new Node.Items(call.stream()
                        .filter(one -> !one.isBlank())
                        .map(one -> (Node) new Node.Text(one))
                        .toList()));
        if (!Wait.shown(member(was, WAIT).orElse(USUAL_WAIT)).equals(pause)) {
            members.put(WAIT, new Node.Text(Wait.read(pause)));
        }
        if (!member(was, ROUNDS).orElse(ONCE).equals(rounds)) {
            members.put(ROUNDS, number(rounds));
        }
        if (asks) {
            members.put(ASK, new Node.Text(SHUT_IN));
        } else {
            members.remove(ASK);
        }
        return new Node.Members(members);
    }

    RungForm withOneMore() {
        var more = new java.util.ArrayList<>(call);
        more.add("");
        return new RungForm(key, more, pause, rounds, asks);
    }

    static Node number(String typed) {
        String digits = typed.strip();
        return digits.matches("\\d{1,9}") ? new Node.Number(digits) : new Node.Text(digits);
    }

    /** A text or a number of the setup as a text. */
    static Optional<String> member(Node.Members object, String name) {
        return Optional.ofNullable(object.nodes().get(name)).map(RungForm::text).filter(text -> !text.isEmpty());
    }

    private static String text(Node node) {
        if (node instanceof Node.Text text) {
            return text.value();
        }
        return node instanceof Node.Number number ? number.written() : "";
    }
}
