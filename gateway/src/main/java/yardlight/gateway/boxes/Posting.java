package yardlight.gateway.boxes;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.escalation.Answer;
import yardlight.gateway.document.Faults;
import yardlight.gateway.lane.PostedEvent;
import yardlight.gateway.problem.Fault;

/** What one request brought: events in order, with, line by line, what there is to say about each. */
final class Posting {

    /** One event as it was read; without an event there are faults. */
    record Line(Optional<PostedEvent> event, Optional<String> note, List<Fault> faults) {

        static Line bad(List<Fault> faults) {
            return new Line(Optional.empty(), Optional.empty(), faults);
        }
    }

    private final List<Line> lines;

    Posting(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    List<PostedEvent> events() {
        return lines.stream().flatMap(line -> line.event().stream()).toList();
    }

    /** The faults with the number of the line in front, {@code #/0/state} for the first, as if the lines were an array. */
    List<Fault> byLine() {
        var faults = new Faults();
        for (int i = 0; i < lines.size(); i++) {
            for (Fault fault : lines.get(i).faults()) {
                faults.add("#/" + i + fault.place().substring(1), fault.detail());
            }
        }
        return faults.list();
    }

    /** The results in the form of the contract: one for each line, those of bad lines with their errors. */
    List<Map<String, Object>> results(List<Answer.Result> decided) {
        var results = new ArrayList<Map<String, Object>>();
        Iterator<Answer.Result> next = decided.iterator();
        for (Line line : lines) {
            results.add(line.event().isPresent() ? good(line, next.next()) : bad(line));
        }
        return results;
    }

    private static Map<String, Object> good(Line line, Answer.Result decided) {
        var result = new LinkedHashMap<String, Object>();
        line.event().orElseThrow().id().ifPresent(id -> result.put("id", id));
        result.put("outcome", decided.outcome().word());
        decided.alarm().ifPresent(alarm -> result.put("alarm", alarm));
        String note =
                Stream.concat(line.note().stream(), decided.note().stream()).collect(Collectors.joining("; "));
        if (!note.isEmpty()) {
            result.put("note", note);
        }
        return result;
    }

    private static Map<String, Object> bad(Line line) {
        return Map.of("errors", line.faults().stream().map(Fault::members).toList());
    }
}
