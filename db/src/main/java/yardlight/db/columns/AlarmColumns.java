package yardlight.db.columns;

import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.number;
import static yardlight.db.columns.Column.text;

import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmDraft;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;

/** Alarms: one row for each occurrence. */
public final class AlarmColumns {

    /**
     * An alarm and its place among the occurrences of its key.
     *
     * @param current whether it is the newest
     */
    public record Occurrence(Alarm alarm, boolean current) {}

    public static final Table<Occurrence> TABLE = Table.of(
            "alarm",
            Stream.of(identity(), state(), times()).flatMap(List::stream).toList());

    private AlarmColumns() {}

    /** The key in one column, {@code mesa-9/water-tank/high-high}. */
    public static String key(AlarmKey key) {
        return Compact.key(key);
    }

    public static AlarmKey key(String column) {
        return Compact.key(column);
    }

    private static List<Column<Occurrence>> identity() {
        return List.of(
                text("id", row -> row.alarm().id()),
                maybe(
                        "current_key",
                        row -> row.current()
                                ? Optional.of(Compact.key(row.alarm().key()))
                                : Optional.empty()),
                maybe(
                        "live_site",
                        row -> row.current() && row.alarm().live()
                                ? Optional.of(row.alarm().key().site())
                                : Optional.empty()),
                text("site", row -> row.alarm().key().site()),
                text("point", row -> row.alarm().key().point()),
                text("condition", row -> row.alarm().key().condition()),
                number("occurrence", row -> row.alarm().occurrence()));
    }

    private static List<Column<Occurrence>> state() {
        return List.of(
                text("state", row -> row.alarm().state().word()),
                maybe("box", row -> row.alarm().box()),
                text("priority", row -> row.alarm().priority().word()),
                maybe("measured_value", row -> row.alarm().measured().value().map(Object::toString)),
                maybe("measured_limit", row -> row.alarm().measured().limit().map(Object::toString)),
                maybe("unit", row -> row.alarm().measured().unit()),
                maybe("words", row -> row.alarm().measured().text()),
                flag("active", row -> row.alarm().active()),
                flag("seen", row -> row.alarm().seen()),
                flag("latched", row -> row.alarm().latched()),
                number("repeats", row -> row.alarm().repeats()),
                maybe("acknowledged_by", row -> row.alarm().acknowledgedBy()),
                text("activations", row -> Compact.instants(row.alarm().activations())),
                maybe("callout", row -> row.alarm().callout()),
                maybe("reading", row -> row.alarm().reading()));
    }

    private static List<Column<Occurrence>> times() {
        return List.of(
                maybeTime("occurred_at", row -> row.alarm().occurredAt()),
                maybeTime("received_at", row -> row.alarm().receivedAt()),
                maybeTime("acknowledged_at", row -> row.alarm().acknowledgedAt()),
                maybeTime("returned_at", row -> row.alarm().returnedAt()),
                maybeTime("shelved_until", row -> row.alarm().shelvedUntil()),
                maybeTime("pending_since", row -> row.alarm().pendingSince()),
                maybeTime("clearing_since", row -> row.alarm().clearingSince()),
                maybeTime("declared_at", row -> row.alarm().declaredAt()),
                maybeTime("realarm_at", row -> row.alarm().realarmAt()));
    }

    public static Alarm read(Row row) throws SQLException {
        var draft = new AlarmDraft(new AlarmKey(row.text("site"), row.text("point"), row.text("condition")))
                .occurrence(row.number("occurrence"))
                .state(state(row.text("state")))
                .box(row.maybe("box"))
                .priority(Priority.of(row.text("priority")).orElseThrow())
                .measured(measured(row))
                .active(row.flag("active"))
                .seen(row.flag("seen"))
                .latched(row.flag("latched"))
                .repeats(row.number("repeats"))
                .activations(Compact.instants(row.text("activations")))
                .callout(row.maybe("callout"))
                .reading(row.maybe("reading"))
                .acknowledgedBy(row.maybe("acknowledged_by"));
        return times(draft, row).done();
    }

    private static AlarmDraft times(AlarmDraft draft, Row row) throws SQLException {
        return draft.occurredAt(row.maybeTime("occurred_at"))
                .receivedAt(row.maybeTime("received_at"))
                .acknowledgedAt(row.maybeTime("acknowledged_at"))
                .returnedAt(row.maybeTime("returned_at"))
                .shelvedUntil(row.maybeTime("shelved_until"))
                .pendingSince(row.maybeTime("pending_since"))
                .clearingSince(row.maybeTime("clearing_since"))
                .declaredAt(row.maybeTime("declared_at"))
                .realarmAt(row.maybeTime("realarm_at"));
    }

    private static Measured measured(Row row) throws SQLException {
        return new Measured(
                row.maybeDecimal("measured_value"),
                row.maybeDecimal("measured_limit"),
                row.maybe("unit"),
                row.maybe("words"));
    }

    /** The state from its column. */
    public static AlarmState state(String word) {
        return AlarmState.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
