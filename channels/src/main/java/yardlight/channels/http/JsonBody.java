package yardlight.channels.http;

import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * JSON. The template is JSON itself with placeholders in its strings, is read once, and each message is written from the
 * tree: so a value cannot be anything but a part of a string.
 */
record JsonBody(JsonNode tree) implements Body {

    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    static Body of(String template) {
        JsonNode tree;
        try {
            tree = JSON.readTree(template);
        } catch (JacksonException e) {
            throw new IllegalArgumentException(
                    "body must be JSON with the placeholders inside its strings: " + template, e);
        }
        checkNames(tree);
        return new JsonBody(tree);
    }

    private static void checkNames(JsonNode node) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            Placeholder.count("body, in the name of a field,", field.getKey(), Set.of());
        }
        node.forEach(JsonBody::checkNames);
    }

    @Override
    public String fill(Values values) {
        return JSON.writeValueAsString(copy(tree, text -> Placeholder.fill(text, values, UnaryOperator.identity())));
    }

    private static JsonNode copy(JsonNode node, UnaryOperator<String> fill) {
        if (node instanceof ObjectNode object) {
            ObjectNode copy = JSON.createObjectNode();
            object.properties().forEach(field -> copy.set(field.getKey(), copy(field.getValue(), fill)));
            return copy;
        }
        if (node instanceof ArrayNode array) {
            ArrayNode copy = JSON.createArrayNode();
            array.forEach(element -> copy.add(copy(element, fill)));
            return copy;
        }
        return node instanceof StringNode text ? StringNode.valueOf(fill.apply(text.stringValue())) : node;
    }
}
