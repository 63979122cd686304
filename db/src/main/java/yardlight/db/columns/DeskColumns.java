package yardlight.db.columns;

import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.number;
import static yardlight.db.columns.Column.text;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.quiet.Tray;

/** Desks: what was sent to a contact of late, and what waits. */
public final class DeskColumns {

    public static final Table<Desk> TABLE = Table.of(
            "desk",
            List.of(
                    text("contact", Desk::contact),
                    text("sent", desk -> Compact.join(desk.sent(), DeskColumns::sent)),
                    text("waiting", desk -> Compact.join(desk.waiting(), DeskColumns::waiting)),
                    number("bundles", Desk::bundles),
                    flag("flood", Desk::flood),
                    maybeTime("alls_well_due", desk -> desk.allsWell().map(Desk.AllsWellAt::due)),
                    maybeTime("alls_well_at", desk -> desk.allsWell().map(Desk.AllsWellAt::at)),
                    text("news", desk -> Compact.join(desk.news().waiting(), DeskColumns::waiting)),
                    text("news_sent", desk -> Compact.instants(desk.news().sent()))));

    private DeskColumns() {}

    public static Desk read(Row row) throws SQLException {
        return new Desk(
                row.text("contact"),
                Compact.split(row.text("sent"), DeskColumns::sent),
                Compact.split(row.text("waiting"), DeskColumns::waiting),
                row.number("bundles"),
                row.flag("flood"),
                allsWell(row),
                new Tray(
                        Compact.split(row.text("news"), DeskColumns::waiting),
                        Compact.instants(row.text("news_sent"))));
    }

    private static Optional<Desk.AllsWellAt> allsWell(Row row) throws SQLException {
        Optional<Instant> due = row.maybeTime("alls_well_due");
        return due.isEmpty() ? Optional.empty() : Optional.of(new Desk.AllsWellAt(due.get(), row.time("alls_well_at")));
    }

    private static String sent(Desk.Sent sent) {
        return sent.at() + (sent.open() ? " open " : " answered ") + String.join(" ", sent.callouts());
    }

    private static Desk.Sent sent(String item) {
        String[] parts = item.split(" ");
        List<String> callouts = Stream.of(parts).skip(2).toList();
        return new Desk.Sent(Instant.parse(parts[0]), callouts, parts[1].equals("open"));
    }

    private static String waiting(Desk.Waiting one) {
        return one.notice() + " " + one.until();
    }

    private static Desk.Waiting waiting(String item) {
        String[] parts = item.split(" ");
        return new Desk.Waiting(parts[0], Instant.parse(parts[1]));
    }
}
