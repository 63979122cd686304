package yardlight.gateway.boxes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** Reads the body of a post of events, in each of the forms that a box may choose. */
final class PostingReader {

    static final int MOST_IN_ARRAY = 500;
    static final int MOST_LINES = 5_000;
    private static final String ACCEPTED =
            String.join(" or ", Format.JSON.type(), Format.LINES.type(), Format.FORM.type());

    private final EventReader reader;

    PostingReader(EventReader reader) {
        this.reader = reader;
    }

    /** @throws Problem 400, 413, 415 or 422; lines of x-ndjson fail one by one, everything else as a whole */
    Posting read(Optional<Format> format, String body) {
        return switch (format.orElse(Format.YAML)) {
            case LINES -> lines(body.lines().filter(line -> !line.isBlank()).toList());
            case FORM -> whole(List.of(event(Document.form(body))));
            case JSON -> json(Document.json(body));
            case YAML, CSV -> throw Problem.wrongType(ACCEPTED);
        };
    }

    private Posting json(Document document) {
        return document.root() instanceof Node.Items items
                ? array(document, items.nodes())
                : whole(List.of(event(document)));
    }

    private Posting array(Document document, List<Node> nodes) {
        bounded(nodes.size(), MOST_IN_ARRAY);
        var lines = new ArrayList<Posting.Line>();
        if (!document.faults().isEmpty()) {
            lines.add(Posting.Line.bad(document.faults()));
        }
        for (int i = 0; i < nodes.size(); i++) {
            var faults = new Faults();
            lines.add(reader.read(document.fields(nodes.get(i), "#/" + i, faults), faults));
        }
        return whole(lines);
    }

    private Posting.Line event(Document document) {
        var faults = new Faults();
        faults.addAll(document.faults());
        return reader.read(document.fields(faults), faults);
    }

    private static Posting whole(List<Posting.Line> lines) {
        var faults = new Faults();
        lines.forEach(line -> faults.addAll(line.faults()));
        faults.orNothing();
        return new Posting(lines);
    }

    private Posting lines(List<String> texts) {
        bounded(texts.size(), MOST_LINES);
        var posting = new Posting(texts.stream().map(this::line).toList());
        if (posting.events().isEmpty()) {
            throw Problem.invalid(posting.byLine());
        }
        return posting;
    }

    private Posting.Line line(String text) {
        try {
            return event(Document.json(text));
        } catch (Problem unreadable) {
            return Posting.Line.bad(List.of(Fault.at("#", unreadable.getMessage())));
        }
    }

    private static void bounded(int size, int most) {
        if (size == 0) {
            throw Problem.invalid(Fault.at("#", "must hold at least one event"));
        }
        if (size > most) {
            throw Problem.tooLarge("there must be at most " + most + " events in one post");
        }
    }
}
