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
import java.util.Optional;
import java.util.function.Function;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Awaited;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;

/** Notices. */
public final class NoticeColumns {

    /**
     * A notice and what the record adds to it.
     *
     * @param channel that of the line which is tried, or was tried last; empty when the contact has no such line
     * @param handedOverAt when a carrier had taken it
     * @param deliveredAt when a carrier had said that it arrived
     */
    public record KeptNotice(
            Notice notice, Optional<String> channel, Optional<Instant> handedOverAt, Optional<Instant> deliveredAt) {

        /** The record after a decision at {@code now}. */
        public KeptNotice next(Notice after, Optional<String> nextChannel, Instant now) {
            return new KeptNotice(
                    after,
                    nextChannel,
                    since(handedOverAt, after.state() == NoticeState.HANDED_OVER, now),
                    since(deliveredAt, after.state() == NoticeState.DELIVERED, now));
        }

        private static Optional<Instant> since(Optional<Instant> before, boolean is, Instant now) {
            return before.isEmpty() && is ? Optional.of(now) : before;
        }
    }

    public static final Table<KeptNotice> TABLE = Table.of(
            "notice",
            List.of(
                    text("id", row -> row.notice().id()),
                    text("contact", row -> row.notice().contact()),
                    text("callouts", row -> Compact.join(row.notice().callouts(), Function.identity())),
                    text("priority", row -> row.notice().priority().word()),
                    text("words", row -> row.notice().text()),
                    text("state", row -> row.notice().state().word()),
                    time("queued_at", row -> row.notice().queuedAt()),
                    maybeTime("held_until", row -> row.notice().heldUntil()),
                    maybe("bundled_into", row -> row.notice().bundledInto()),
                    number("line", row -> row.notice().line()),
                    maybe("channel", KeptNotice::channel),
                    maybeTime("handed_over_at", KeptNotice::handedOverAt),
                    maybeTime("delivered_at", KeptNotice::deliveredAt),
                    maybeTime("awaited_since", row -> row.notice().awaited().map(Awaited::since)),
                    maybeTime("awaited_until", row -> row.notice().dueAt()),
                    text("purpose", row -> row.notice().purpose().word())));

    /** Those that tell of one of these callouts; one that tells of several is there as often. */
    public static final String OF_CALLOUTS = TABLE.join(
            Table.WANTED + " join notice_callout c on c.callout = wanted.one join notice t on t.id = c.notice");

    private NoticeColumns() {}

    public static KeptNotice read(Row row) throws SQLException {
        return new KeptNotice(
                notice(row), row.maybe("channel"), row.maybeTime("handed_over_at"), row.maybeTime("delivered_at"));
    }

    private static Notice notice(Row row) throws SQLException {
        return new Notice(
                row.text("id"),
                row.text("contact"),
                Compact.split(row.text("callouts"), Function.identity()),
                Priority.of(row.text("priority")).orElseThrow(),
                row.text("words"),
                NoticeState.valueOf(row.text("state").toUpperCase(Locale.ROOT).replace('-', '_')),
                row.time("queued_at"),
                row.maybeTime("held_until"),
                row.maybe("bundled_into"),
                row.number("line"),
                awaited(row),
                row.maybe("purpose").map(Purpose::of).orElse(Purpose.CALL));
    }

    private static Optional<Awaited> awaited(Row row) throws SQLException {
        Optional<Instant> until = row.maybeTime("awaited_until");
        return row.maybeTime("awaited_since").flatMap(since -> until.map(end -> new Awaited(since, end)));
    }
}
