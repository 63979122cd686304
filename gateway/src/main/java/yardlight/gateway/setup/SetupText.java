package yardlight.gateway.setup;

import java.io.StringWriter;
import java.util.regex.Pattern;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.problem.Problem;

/** A setup document as text: as it was handed in, comments and all, or in the other format. */
public final class SetupText {

    private static final JsonFactory JSON = new JsonFactory();
    private static final YAMLFactory YAML = YAMLFactory.builder()
            .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER)
            .enable(YAMLWriteFeature.MINIMIZE_QUOTES)
            .enable(YAMLWriteFeature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
            .build();

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?");

    private SetupText() {}

    /** The stored text in this format; unchanged if that is what it is. */
    public static String as(Format format, String stored) {
        if (format(stored) == format) {
            return stored;
        }
        return format == Format.JSON
                ? written(JSON, Document.setupYaml(stored).root())
                : written(YAML, Document.setupJson(stored).root());
    }

    /** In which format a stored document is: what can be read as JSON is JSON, everything else YAML. */
    public static Format format(String stored) {
        try {
            Document.setupJson(stored);
            return Format.JSON;
        } catch (Problem notJson) {
            return Format.YAML;
        }
    }

    /** A stored document as a tree. */
    public static Document document(String stored) {
        return format(stored) == Format.JSON ? Document.setupJson(stored) : Document.setupYaml(stored);
    }

    /** A tree as a document. */
    public static String of(Format format, Node root) {
        return written(format == Format.JSON ? JSON : YAML, root);
    }

    private static String written(TokenStreamFactory factory, Node root) {
        var text = new StringWriter();
        try (JsonGenerator generator = factory.createGenerator(ObjectWriteContext.empty(), text)) {
            write(generator, root);
        }
        return text.toString();
    }

    private static void write(JsonGenerator generator, Node node) {
        if (node instanceof Node.Members object) {
            generator.writeStartObject();
            object.nodes().forEach((name, value) -> {
                generator.writeName(name);
                write(generator, value);
            });
            generator.writeEndObject();
        } else if (node instanceof Node.Items list) {
            generator.writeStartArray();
            list.nodes().forEach(item -> write(generator, item));
            generator.writeEndArray();
        } else {
            scalar(generator, node);
        }
    }

    /** YAML knows numbers that JSON does not, such as 007: those become texts, and are read as before. */
    private static void scalar(JsonGenerator generator, Node node) {
        if (node instanceof Node.Text text) {
            generator.writeString(text.value());
        } else if (node instanceof Node.Number number) {
            number(generator, number.written());
        } else if (node instanceof Node.Flag flag) {
            generator.writeBoolean(flag.value());
        } else {
            generator.writeNull();
        }
    }

    private static void number(JsonGenerator generator, String written) {
        if (NUMBER.matcher(written).matches()) {
            generator.writeNumber(written);
        } else {
            generator.writeString(written);
        }
    }
}
