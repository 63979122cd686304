package yardlight.gateway.readings;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.gateway.document.Faults;
import yardlight.gateway.lane.PostedReading;
import yardlight.gateway.problem.Fault;

/**
 * What one request brought: readings in order, with, line by line, what there is to say about each.
 *
 * @param eachLine whether there is a result for each; otherwise only for those with something to say
 */
record Bundle(List<Line> lines, boolean eachLine) {

    /** One reading as it was read; without a reading there are faults. */
    record Line(Optional<PostedReading> reading, Optional<String> note, List<Fault> faults) {

        static Line bad(List<Fault> faults) {
            return new Line(Optional.empty(), Optional.empty(), faults);
        }
    }

    Bundle {
        lines = List.copyOf(lines);
    }

    List<PostedReading> readings() {
        return lines.stream().flatMap(line -> line.reading().stream()).toList();
    }

    /** The faults with the number of the line in front, {@code #/0/value} for the first, as if the lines were an array. */
    List<Fault> byLine() {
        var faults = new Faults();
        for (int i = 0; i < lines.size(); i++) {
            for (Fault fault : lines.get(i).faults()) {
                faults.add("#/" + i + fault.place().substring(1), fault.detail());
            }
        }
        return faults.list();
    }

    /** The results in the form of the contract; where a line may be left out each says which reading it is about, from 0. */
    List<Map<String, Object>> results(List<Fate> decided) {
        var results = new ArrayList<Map<String, Object>>();
        Iterator<Fate> next = decided.iterator();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            Map<String, Object> said = line.reading().isPresent() ? good(line, next.next()) : bad(line);
            if (eachLine) {
                results.add(said);
            } else if (said.size() > 1 || !said.containsValue(word(Fate.KEPT))) {
                var numbered = new LinkedHashMap<String, Object>();
                numbered.put("reading", i);
                numbered.putAll(said);
                results.add(numbered);
            }
        }
        return results;
    }

    private static Map<String, Object> good(Line line, Fate fate) {
        var result = new LinkedHashMap<String, Object>();
        result.put("outcome", word(fate));
        line.note().ifPresent(note -> result.put("note", note));
        return result;
    }

    private static Map<String, Object> bad(Line line) {
        return Map.of("errors", line.faults().stream().map(Fault::members).toList());
    }

    static String word(Fate fate) {
        return fate.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
