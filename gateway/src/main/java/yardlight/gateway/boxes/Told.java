package yardlight.gateway.boxes;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardlight.escalation.Answer;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.lane.PostedEvent;

/** What a box posted, and what came of it, in the words of the contract and in short. */
final class Told {

    private static final int SHOWN = 3;

    private Told() {}

    static String events(List<PostedEvent> events) {
        String first = events.stream()
                .limit(SHOWN)
                .map(PostedEvent::report)
                .map(Told::report)
                .collect(Collectors.joining("; "));
        return events.size() > SHOWN ? first + "; +" + (events.size() - SHOWN) : first;
    }

    private static String report(Report report) {
        var words = new ArrayList<String>(
                List.of(report.key().point(), report.key().condition(), report.active() ? "active" : "normal"));
        report.measured().value().ifPresent(value -> words.add(value.toPlainString()));
        report.measured().unit().ifPresent(words::add);
        return String.join(" ", words);
    }

    static String results(List<Answer.Result> results) {
        return results.stream()
                .collect(Collectors.groupingBy(one -> one.outcome().word(), TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(entry -> entry.getValue() == 1 ? entry.getKey() : entry.getKey() + " ×" + entry.getValue())
                .collect(Collectors.joining(", "));
    }

    static String heartbeat(Heartbeat said) {
        var words = new ArrayList<String>();
        said.uptime().ifPresent(uptime -> words.add("uptime " + uptime.toSeconds() + " s"));
        said.battery().ifPresent(volts -> words.add("battery " + volts + " V"));
        said.signal().ifPresent(dbm -> words.add("signal " + dbm + " dBm"));
        said.feeds().forEach((feed, on) -> words.add(feed + (on ? " on" : " off")));
        return String.join(", ", words);
    }
}
