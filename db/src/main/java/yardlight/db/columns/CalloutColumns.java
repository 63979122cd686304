package yardlight.db.columns;

import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.number;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Callout.Facts;
import yardlight.escalation.ladder.Place;

/** Callouts. */
public final class CalloutColumns {

    public static final Table<Callout> TABLE = Table.of(
            "callout", Stream.of(facts(), standing()).flatMap(List::stream).toList());

    private CalloutColumns() {}

    private static List<Column<Callout>> facts() {
        return List.of(
                text("id", Callout::id),
                number("code", callout -> callout.facts().code()),
                text("site", callout -> callout.facts().site()),
                text("ladder", callout -> callout.facts().ladder()),
                text("priority", callout -> callout.facts().priority().word()),
                text("alarms", callout -> Compact.join(callout.facts().alarms(), Compact::key)),
                time("started_at", callout -> callout.facts().startedAt()),
                number("notices", callout -> callout.facts().notices()),
                number("announced", callout -> callout.facts().announced()),
                text("told", callout -> Compact.join(callout.facts().told(), Function.identity())),
                text(
                        "held",
                        callout -> Compact.join(
                                callout.facts().held().entrySet(), one -> one.getKey() + " " + one.getValue())));
    }

    private static List<Column<Callout>> standing() {
        return List.of(
                text("kind", callout -> callout.kind().word()),
                maybe(
                        "live_site",
                        callout -> callout.live() ? Optional.of(callout.facts().site()) : Optional.empty()),
                number("climb", callout -> callout.place().climb()),
                number("rung", callout -> callout.place().rung()),
                number("round", callout -> callout.place().round()),
                maybeTime("due_at", Callout::dueAt),
                maybeTime("ended_at", CalloutColumns::endedAt),
                maybe(
                        "answered_by",
                        callout -> as(callout, Callout.Answered.class).map(Callout.Answered::by)),
                maybe("reason", callout -> as(callout, Callout.Ended.class).map(Callout.Ended::reason)),
                maybeTime("was_due", callout -> as(callout, Callout.Ended.class).flatMap(Callout.Ended::wasDue)));
    }

    private static Optional<Instant> endedAt(Callout callout) {
        return switch (callout.kind()) {
            case CALLING, HELD -> Optional.empty();
            case ANSWERED -> Optional.of(((Callout.Answered) callout).at());
            case ENDED -> Optional.of(((Callout.Ended) callout).at());
            case EXHAUSTED -> Optional.of(((Callout.Exhausted) callout).at());
        };
    }

    private static <T> Optional<T> as(Callout callout, Class<T> kind) {
        return Optional.of(callout).filter(kind::isInstance).map(kind::cast);
    }

    public static Callout read(Row row) throws SQLException {
        Facts facts = facts(row);
        var place = new Place(row.number("climb"), row.number("rung"), row.number("round"));
        return switch (Callout.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT))) {
            case CALLING -> new Callout.Calling(facts, place, row.time("due_at"));
            case HELD -> new Callout.Held(facts, place, row.time("due_at"));
            case ANSWERED -> new Callout.Answered(facts, place, row.text("answered_by"), row.time("ended_at"));
            case ENDED ->
                new Callout.Ended(facts, place, row.maybeTime("was_due"), row.text("reason"), row.time("ended_at"));
            case EXHAUSTED -> new Callout.Exhausted(facts, place, row.time("ended_at"));
        };
    }

    private static Facts facts(Row row) throws SQLException {
        return new Facts(
                row.text("id"),
                row.number("code"),
                row.text("site"),
                row.text("ladder"),
                Priority.of(row.text("priority")).orElseThrow(),
                Compact.split(row.text("alarms"), Compact::key),
                row.time("started_at"),
                row.number("notices"),
                row.number("announced"),
                new TreeSet<>(Compact.split(row.text("told"), Function.identity())),
                held(row.text("held")));
    }

    private static Map<String, Instant> held(String column) {
        var held = new TreeMap<String, Instant>();
        for (String one : Compact.split(column, Function.identity())) {
            String[] parts = one.split(" ");
            held.put(parts[0], Instant.parse(parts[1]));
        }
        return held;
    }
}
