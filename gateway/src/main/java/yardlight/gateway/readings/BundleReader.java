package yardlight.gateway.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Reads the body of a post of readings, in each of the forms that a box may choose. */
final class BundleReader {

    static final int MOST_IN_ARRAY = 2_000;
    static final int MOST_LINES = 5_000;
    private static final String ACCEPTED =
            String.join(" or ", Format.JSON.type(), Format.LINES.type(), Format.FORM.type(), Format.CSV.type());

    private final ReadingReader reader;

    BundleReader(ReadingReader reader) {
        this.reader = reader;
    }

    /** @throws Problem 400, 413, 415 or 422; lines fail one by one, everything else as a whole */
    Bundle read(Optional<Format> format, String body) {
        return switch (format.orElse(Format.YAML)) {
            case LINES ->
                lines(
                        body.lines()
                                .filter(line -> !line.isBlank())
                                .map(line -> (Supplier<Document>) () -> Document.json(line))
                                .toList(),
                        true);
            case CSV ->
                lines(
                        Document.csv(body).stream()
                                .map(document -> (Supplier<Document>) () -> document)
                                .toList(),
                        false);
            case FORM -> whole(List.of(reading(Document.form(body))));
            case JSON -> json(Document.json(body));
            case YAML -> throw Problem.wrongType(ACCEPTED);
        };
    }

    private Bundle json(Document document) {
        if (document.root() instanceof Node.Items items) {
            return array(document, items.nodes(), "#/");
        }
        boolean several =
                document.root() instanceof Node.Members object && object.nodes().get("readings") instanceof Node.Items;
        if (!several) {
            return whole(List.of(reading(document)));
        }
        var items = (Node.Items) ((Node.Members) document.root()).nodes().get("readings");
        return array(document, items.nodes(), "#/readings/");
    }

    private Bundle array(Document document, List<Node> nodes, String pointer) {
        bounded(nodes.size(), MOST_IN_ARRAY);
        var lines = new ArrayList<Bundle.Line>();
        if (!document.faults().isEmpty()) {
            lines.add(Bundle.Line.bad(document.faults()));
        }
        for (int i = 0; i < nodes.size(); i++) {
            var faults = new Faults();
            lines.add(reader.read(document.fields(nodes.get(i), pointer + i, faults), faults));
        }
        return whole(lines);
    }

    private Bundle.Line reading(Document document) {
        var faults = new Faults();
        faults.addAll(document.faults());
        return reader.read(document.fields(faults), faults);
    }

    private static Bundle whole(List<Bundle.Line> lines) {
        var faults = new Faults();
        lines.forEach(line -> faults.addAll(line.faults()));
        faults.orNothing();
        return new Bundle(lines, false);
    }

    private Bundle lines(List<Supplier<Document>> documents, boolean eachLine) {
        bounded(documents.size(), MOST_LINES);
        var bundle = new Bundle(documents.stream().map(this::line).toList(), eachLine);
        if (bundle.readings().isEmpty()) {
            throw Problem.invalid(bundle.byLine());
        }
        return bundle;
    }

    private Bundle.Line line(Supplier<Document> document) {
        try {
            return reading(document.get());
        } catch (Problem unreadable) {
            return Bundle.Line.bad(List.of(Fault.at("#", unreadable.getMessage())));
        }
    }

    private static void bounded(int size, int most) {
        if (size == 0) {
            throw Problem.invalid(Fault.at("#", "must hold at least one reading"));
        }
        if (size > most) {
            throw Problem.tooLarge("there must be at most " + most + " readings in one post");
        }
    }
}
