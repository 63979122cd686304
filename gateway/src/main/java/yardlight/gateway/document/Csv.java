package yardlight.gateway.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/**
 * Comma-separated values (RFC 4180) with a line of names, as documents: one for each line, every value a text, an empty one
 * absent. Lines may end with a line feed alone, and empty lines are none.
 */
final class Csv {

    private static final int MOST_COLUMNS = 32;

    private final String text;
    private int place;

    private Csv(String text) {
        // A mark of the byte order is no part of the first name.
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    static List<Document> documents(String text) {
        var csv = new Csv(text);
        List<String> names = csv.row().stream().map(String::strip).toList();
        boolean unnamed = names.stream().anyMatch(String::isEmpty);
        if (unnamed || new HashSet<>(names).size() < names.size() || names.size() > MOST_COLUMNS) {
            throw Problem.unreadable("the first line must name each column, such as point,value,unit,at");
        }
        var documents = new ArrayList<Document>();
        while (csv.place < csv.text.length()) {
            List<String> values = csv.row();
            if (!values.equals(List.of(""))) {
                documents.add(document(names, values));
            }
        }
        return documents;
    }

    private static Document document(List<String> names, List<String> values) {
        var members = new LinkedHashMap<String, Node>();
        for (int i = 0; i < Math.min(names.size(), values.size()); i++) {
            String value = values.get(i).strip();
            members.put(names.get(i), value.isEmpty() ? new Node.Nothing() : new Node.Text(value));
        }
        List<Fault> faults = values.size() > names.size()
                ? List.of(Fault.at("#", "must have at most as many values as there are names: " + values.size()))
                : List.of();
        return new Document(new Node.Members(members), faults, true);
    }

    /** The values up to the end of the line, or up to the end of all. */
    private List<String> row() {
        var values = new ArrayList<String>();
        do {
            values.add(value());
        } while (take(','));
        boolean end = take('\r') | take('\n');
        if (!end && place < text.length()) {
            throw notThat();
        }
        return values;
    }

    private String value() {
        if (!take('"')) {
            int begin = place;
            while (place < text.length() && ",\r\n\"".indexOf(text.charAt(place)) < 0) {
                place++;
            }
            return text.substring(begin, place);
        }
        var value = new StringBuilder();
        do {
            int end = text.indexOf('"', place);
            if (end < 0) {
                throw notThat();
            }
            value.append(text, place, end);
            place = end + 1;
            if (place < text.length() && text.charAt(place) == '"') {
                value.append('"');
            }
        } while (take('"'));
        return value.toString();
    }

    private boolean take(char wanted) {
        boolean there = place < text.length() && text.charAt(place) == wanted;
        place += there ? 1 : 0;
        return there;
    }

    private Problem notThat() {
        long line = text.substring(0, Math.min(place, text.length())).lines().count();
        return Problem.unreadable("the body cannot be read as CSV: line " + Math.max(1, line));
    }
}
