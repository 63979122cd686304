package yardlight.gateway.document;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/**
 * A document as a tree.
 *
 * @param root the whole of it
 * @param faults what can be read and is wrong all the same: names that come twice, YAML aliases
 * @param loose whether texts and numbers cannot be told apart for certain, as in YAML and in forms
 */
public record Document(Node root, List<Fault> faults, boolean loose) {

    private static final JsonFactory JSON =
            JsonFactory.builder().streamReadConstraints(bounds(300_000)).build();

    /** A box is about fifteen tokens; how many there may be is bounded by the size of the body. */
    private static final StreamReadConstraints SETUP = bounds(8_000_000);

    private static final JsonFactory SETUP_JSON =
            JsonFactory.builder().streamReadConstraints(SETUP).build();
    private static final YAMLFactory SETUP_YAML = YAMLFactory.builder()
            .streamReadConstraints(SETUP)
            .loadSettings(LoadSettings.builder()
                    .setCodePointLimit(Body.MOST)
                    // What comes twice is a fault that is named with its place, not a document that cannot be read.
                    .setAllowDuplicateKeys(true)
                    .build())
            .build();

    public Document {
        faults = List.copyOf(faults);
    }

    /** @throws Problem 400 when it is not JSON */
    public static Document json(String text) {
        return read(JSON, text, "JSON", false);
    }

    /**
     * A setup, which may be as long as {@link Body#roomy} lets it in.
     *
     * @throws Problem 400 when it is not JSON
     */
    public static Document setupJson(String text) {
        return read(SETUP_JSON, text, "JSON", false);
    }

    /**
     * A setup, which may be as long as {@link Body#roomy} lets it in.
     *
     * @throws Problem 400 when it is not YAML
     */
    public static Document setupYaml(String text) {
        return read(SETUP_YAML, text, "YAML", true);
    }

    /** @throws Problem 400 when it is no form */
    public static Document form(String text) {
        return Form.document(text);
    }

    /**
     * Each line of values as an object of texts, by the names in the first line.
     *
     * @throws Problem 400 when it is not CSV, or when its first line does not name its columns
     */
    public static List<Document> csv(String text) {
        return Csv.documents(text);
    }

    /** Far above what the contract needs, far below what hurts. */
    private static StreamReadConstraints bounds(long tokens) {
        return StreamReadConstraints.builder()
                .maxNestingDepth(24)
                .maxNumberLength(64)
                .maxNameLength(256)
                .maxStringLength(65_536)
                .maxTokenCount(tokens)
                .build();
    }

    private static Document read(TokenStreamFactory factory, String text, String format, boolean loose) {
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
            var reader = new TreeReader(parser);
            Node root = reader.root();
            return new Document(root, reader.faults(), loose);
        } catch (JacksonException e) {
            throw notThat(
                    format, Optional.ofNullable(e.getLocation()).map(at -> place(at.getLineNr(), at.getColumnNr())));
        } catch (MarkedYamlEngineException e) {
            throw notThat(format, e.getProblemMark().map(mark -> place(mark.getLine() + 1, mark.getColumn() + 1)));
        } catch (YamlEngineException e) {
            throw notThat(format, Optional.empty());
        }
    }

    private static String place(int line, int column) {
        return line < 1 ? "" : ": line " + line + ", column " + column;
    }

    private static Problem notThat(String format, Optional<String> place) {
        return Problem.unreadable("the body cannot be read as " + format + place.orElse(""));
    }

    /** The same, with texts and numbers taken for each other. */
    public Document loosely() {
        return new Document(root, faults, true);
    }

    /** The root as an object; anything else is a fault. */
    public Fields fields(Faults found) {
        return fields(root, "#", found);
    }

    /** A part of this document as an object. */
    public Fields fields(Node part, String pointer, Faults found) {
        return new Fields(part, pointer, found, new Typing(loose));
    }
}
