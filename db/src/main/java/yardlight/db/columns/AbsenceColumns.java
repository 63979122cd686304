package yardlight.db.columns;

import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Absence.Member;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.heartbeat.Judgement;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;

/** Silences: one row for each occurrence of their alarm. */
public final class AbsenceColumns {

    /**
     * A silence and its place among those of its path.
     *
     * @param current whether it is the newest
     */
    public record Placed(Absence absence, boolean current) {}

    public static final Table<Placed> TABLE = Table.of(
            "silence",
            List.of(
                    text("alarm", row -> row.absence().alarm()),
                    maybe(
                            "newest_on",
                            row -> row.current()
                                    ? Optional.of(path(row.absence().path()))
                                    : Optional.empty()),
                    text("alarm_key", row -> Compact.key(row.absence().key())),
                    text("path", row -> path(row.absence().path())),
                    text("shared", row -> path(row.absence().shared())),
                    time("since", row -> row.absence().since()),
                    time("found_at", row -> row.absence().foundAt()),
                    maybeTime("ended_at", row -> row.absence().endedAt()),
                    text("told", row -> row.absence().told().condition()),
                    text("verdict", row -> row.absence().verdict().condition()),
                    text("evidence", row -> evidence(row.absence().judgement())),
                    text("members", row -> members(row.absence().members()))));

    private AbsenceColumns() {}

    /** The path in one column, {@code link night hub}: only the name may have spaces in it. */
    public static String path(Path path) {
        return path.kind().name().toLowerCase(Locale.ROOT) + " " + path.ladder() + " " + path.name();
    }

    public static Path path(String column) {
        String[] parts = column.split(" ", 3);
        return new Path(Path.Kind.valueOf(parts[0].toUpperCase(Locale.ROOT)), parts[2], parts[1]);
    }

    public static Absence read(Row row) throws SQLException {
        return new Absence(
                row.text("alarm"),
                Compact.key(row.text("alarm_key")),
                path(row.text("path")),
                path(row.text("shared")),
                row.time("since"),
                row.time("found_at"),
                members(row.text("members")),
                verdict(row.text("told")),
                Judgement.by(Compact.split(row.text("evidence"), AbsenceColumns::clue)),
                row.maybeTime("ended_at"));
    }

    /** The verdict with this word. */
    public static Verdict verdict(String word) {
        return Verdict.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static String evidence(Judgement judgement) {
        return Compact.join(
                judgement.evidence().values(),
                one -> one.clue().name() + " " + one.at() + " " + one.about().replace(';', ','));
    }

    private static Evidence clue(String text) {
        String[] parts = text.split(" ", 3);
        return new Evidence(Clue.valueOf(parts[0]), Instant.parse(parts[1]), parts[2]);
    }

    private static String members(Map<String, Member> members) {
        Function<Map.Entry<String, Member>, String> text =
                one -> one.getKey() + " " + one.getValue().since()
                        + one.getValue().back().map(at -> " " + at).orElse("");
        return Compact.join(members.entrySet(), text);
    }

    private static TreeMap<String, Member> members(String column) {
        var members = new TreeMap<String, Member>();
        Compact.split(column, text -> text.split(" "))
                .forEach(parts -> members.put(
                        parts[0],
                        new Member(
                                Instant.parse(parts[1]),
                                parts.length > 2 ? Optional.of(Instant.parse(parts[2])) : Optional.empty())));
        return members;
    }
}
