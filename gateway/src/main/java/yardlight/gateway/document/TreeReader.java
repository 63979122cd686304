package yardlight.gateway.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.yaml.YAMLParser;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Makes a tree of a stream of tokens. An alias is never followed, so that a short text cannot stand for a huge tree. */
final class TreeReader {

    private final JsonParser parser;
    private final Faults faults = new Faults();

    TreeReader(JsonParser parser) {
        this.parser = parser;
    }

    List<Fault> faults() {
        return faults.list();
    }

    Node root() {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw Problem.unreadable("the body is empty");
        }
        Node root = node(first, "#");
        if (parser.nextToken() != null) {
            throw Problem.unreadable("the body must be one document and nothing after it");
        }
        return root;
    }

    private Node node(JsonToken token, String pointer) {
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            faults.add(pointer, "must be written out: aliases are not followed");
            return new Node.Nothing();
        }
        return switch (token) {
            case START_OBJECT -> members(pointer);
            case START_ARRAY -> items(pointer);
            case VALUE_TRUE, VALUE_FALSE -> new Node.Flag(token == JsonToken.VALUE_TRUE);
            case VALUE_NULL -> new Node.Nothing();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Number(parser.getString());
            case VALUE_STRING -> new Node.Text(parser.getString());
            case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                throw Problem.unreadable("the body holds something that is neither text nor number");
        };
    }

    private Node members(String pointer) {
        var members = new LinkedHashMap<String, Node>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            String place = Pointers.member(pointer, name);
            Node node = node(parser.nextToken(), place);
            if (members.putIfAbsent(name, node) != null) {
                faults.add(place, "must not be there twice");
            }
        }
        return new Node.Members(members);
    }

    private Node items(String pointer) {
        var items = new ArrayList<Node>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token, pointer + "/" + items.size()));
        }
        return new Node.Items(items);
    }
}
