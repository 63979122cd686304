package yardlight.gateway.document;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Form fields as a document: every value is a text, and an empty one counts as absent. */
final class Form {

    private Form() {}

    static Document document(String body) {
        var members = new LinkedHashMap<String, Node>();
        List<Fault> faults = new ArrayList<>();
        for (String pair : body.strip().split("&")) {
            int equals = pair.indexOf('=');
            String name = decoded(equals < 0 ? pair : pair.substring(0, equals));
            String value = equals < 0 ? "" : decoded(pair.substring(equals + 1));
            Node node = value.isEmpty() ? new Node.Nothing() : new Node.Text(value);
            if (!name.isEmpty() && members.putIfAbsent(name, node) != null) {
                faults.add(Fault.at(Pointers.member("#", name), "must not be there twice"));
            }
        }
        return new Document(new Node.Members(members), faults, true);
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw Problem.unreadable("the body cannot be read as a form");
        }
    }
}
