package yardlight.db.journal;

import static yardlight.db.columns.Column.big;
import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.number;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.util.List;
import yardlight.db.columns.LogColumns;
import yardlight.db.columns.Table;

/** Writes what is only ever added: events, attempts, log lines and their tree. */
final class RecordStore {

    private record Numbered<T>(long number, T row) {}

    private static final Table<Numbered<PostedRecord>> EVENTS = Table.of(
            "event",
            List.of(
                    big("number", Numbered::number),
                    text("box", one -> one.row().box()),
                    maybe(
                            "box_event",
                            one -> one.row()
                                    .id()
                                    .map(id -> PostedRecord.name(one.row().box(), id))),
                    text("site", one -> one.row().report().key().site()),
                    text("point", one -> one.row().report().key().point()),
                    text("condition", one -> one.row().report().key().condition()),
                    flag("active", one -> one.row().report().active()),
                    maybe("priority", one -> one.row().report().priority().map(priority -> priority.word())),
                    maybe(
                            "measured_value",
                            one -> one.row().report().measured().value().map(Object::toString)),
                    maybe(
                            "measured_limit",
                            one -> one.row().report().measured().limit().map(Object::toString)),
                    maybe("unit", one -> one.row().report().measured().unit()),
                    maybe("words", one -> one.row().report().measured().text()),
                    time("happened_at", one -> one.row().report().at()),
                    flag("declared", one -> one.row().report().declared()),
                    time("received_at", one -> one.row().receivedAt()),
                    text("outcome", one -> one.row().outcome().word()),
                    maybe("alarm", one -> one.row().alarm())));

    private static final Table<Numbered<AttemptRecord>> ATTEMPTS = Table.of(
            "attempt",
            List.of(
                    big("number", Numbered::number),
                    text("notice", one -> one.row().notice()),
                    time("attempted_at", one -> one.row().at()),
                    text("channel", one -> one.row().channel()),
                    text("outcome", one -> one.row().outcome()),
                    text("detail", one -> one.row().detail()),
                    number("line", one -> one.row().line()),
                    maybe("reference", one -> one.row().reference())));

    private final Pen pen;
    private final Numbers numbers;

    RecordStore(Pen pen, Numbers numbers) {
        this.pen = pen;
        this.numbers = numbers;
    }

    void write(Extras extras) {
        pen.insert(EVENTS, numbered(extras.events));
        pen.insert(ATTEMPTS, numbered(extras.attempts));
        pen.insert(LogColumns.TABLE, new TreeStore(pen, numbers).add(extras.lines));
    }

    private <T> List<Numbered<T>> numbered(List<T> rows) {
        return rows.stream()
                .map(row -> new Numbered<>(numbers.nextNumber(), row))
                .toList();
    }
}
