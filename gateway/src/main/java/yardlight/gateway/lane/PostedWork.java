package yardlight.gateway.lane;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.db.journal.PostedRecord;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Report;

/** What a box posted in one go: repeated ids are taken out, the rest is one stimulus, and all of it is recorded. */
record PostedWork(String box, List<PostedEvent> events, boolean spent) implements Work<List<Answer.Result>> {

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(new Stimulus.Reported(
                box, events.stream().map(PostedEvent::report).toList()));
        events.forEach(event -> name(event).ifPresent(names::add));
    }

    @Override
    public List<Answer.Result> take(Turn turn) {
        List<Boolean> repeated = repeated(turn);
        List<Report> fresh = fresh(repeated, turn.now());
        if (spent
                && fresh.stream()
                        .noneMatch(report -> AlarmRules.news(turn.sheet().alarm(report.key()), report))) {
            throw new TooManyPosts(box);
        }
        Decision decision = turn.decide(new Stimulus.Reported(box, fresh));
        if (decision.answer() instanceof Answer.Refusal refusal) {
            throw new UnknownBox(refusal.reason());
        }
        turn.apply(decision);
        return record(turn, repeated, ((Answer.Results) decision.answer()).results());
    }

    /** For each event whether the box has sent it before: in this posting, in this batch, or within the last 30 days. */
    private List<Boolean> repeated(Turn turn) {
        Set<String> inHere = new HashSet<>();
        return events.stream()
                .map(event -> name(event)
                        .map(name -> turn.known(name).isPresent() || !inHere.add(name))
                        .orElse(false))
                .toList();
    }

    /** Times are kept as the databases keep them, and none is later than the decision. */
    private List<Report> fresh(List<Boolean> repeated, Instant now) {
        var fresh = new ArrayList<Report>();
        for (int i = 0; i < events.size(); i++) {
            if (!repeated.get(i)) {
                Report said = events.get(i).report();
                Instant at = said.at().isAfter(now) ? now : said.at().truncatedTo(ChronoUnit.MICROS);
                fresh.add(new Report(
                        said.key(),
                        said.box(),
                        said.active(),
                        said.priority(),
                        said.measured(),
                        at,
                        said.declared(),
                        said.request()));
            }
        }
        return fresh;
    }

    private List<Answer.Result> record(Turn turn, List<Boolean> repeated, List<Answer.Result> decided) {
        Iterator<Answer.Result> next = decided.iterator();
        var results = new ArrayList<Answer.Result>();
        for (int i = 0; i < events.size(); i++) {
            PostedEvent event = events.get(i);
            Answer.Result result = repeated.get(i) ? duplicate(turn, event) : next.next();
            if (!repeated.get(i)) {
                name(event).ifPresent(name -> turn.remember(name, result.alarm()));
            }
            turn.writing()
                    .event(new PostedRecord(
                            box, event.id(), event.report(), turn.now(), result.outcome(), result.alarm()));
            results.add(result);
        }
        return results;
    }

    private Answer.Result duplicate(Turn turn, PostedEvent event) {
        String id = event.id().orElseThrow();
        Optional<String> alarm = turn.known(PostedRecord.name(box, id)).flatMap(known -> known);
        turn.log(List.of(new Entry(
                Entry.What.EVENT,
                Map.of("site", event.report().key().site(), "box", box),
                event.report().key().local() + ": duplicate, box " + box + " has sent " + id + " before")));
        return new Answer.Result(Outcome.DUPLICATE, alarm);
    }

    private Optional<String> name(PostedEvent event) {
        return event.id().map(id -> PostedRecord.name(box, id));
    }

    @Override
    public int weight() {
        return Math.max(1, events.size());
    }

    @Override
    public String about() {
        String first = events.stream().limit(1).toList().toString();
        return events.size() + " events of " + box + ", the first: "
                + first.substring(0, Math.min(500, first.length()));
    }
}
