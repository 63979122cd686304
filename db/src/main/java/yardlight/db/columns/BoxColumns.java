package yardlight.db.columns;

import static yardlight.db.columns.Column.big;
import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.real;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Habit;
import yardlight.escalation.heartbeat.Heartbeat;

/** What is known of boxes. */
public final class BoxColumns {

    public static final Table<BoxWatch> TABLE = Table.of(
            "box_watch",
            List.of(
                    text("box", BoxWatch::box),
                    time("heard_at", BoxWatch::heardAt),
                    maybeTime("deadline", BoxWatch::deadline),
                    flag("silent", BoxWatch::silent),
                    big(
                            "uptime",
                            watch -> watch.last()
                                    .uptime()
                                    .map(Duration::toSeconds)
                                    .orElse(null)),
                    text(
                            "feeds",
                            watch -> Compact.join(
                                    watch.last().feeds().entrySet(),
                                    feed -> feed.getKey() + (feed.getValue() ? " on" : " off"))),
                    real("battery", watch -> watch.last().battery().orElse(null)),
                    real("signal", watch -> watch.last().signal().orElse(null)),
                    maybeTime("said_at", watch -> watch.last().at()),
                    maybe("absence", watch -> watch.absence().map(AbsenceColumns::path)),
                    real("usual_battery", watch -> watch.habit().battery().orElse(null)),
                    real("usual_signal", watch -> watch.habit().signal().orElse(null)),
                    text("arrivals", watch -> ArrivalsColumn.text(watch.arrivals()))));

    private BoxColumns() {}

    public static BoxWatch read(Row row) throws SQLException {
        var last = new Heartbeat(
                row.maybeBig("uptime").map(Duration::ofSeconds),
                feeds(row.text("feeds")),
                row.maybeReal("battery"),
                row.maybeReal("signal"),
                row.maybeTime("said_at"));
        return new BoxWatch(
                row.text("box"),
                row.time("heard_at"),
                row.maybeTime("deadline"),
                row.flag("silent"),
                last,
                row.maybe("absence").map(AbsenceColumns::path),
                new Habit(row.maybeReal("usual_battery"), row.maybeReal("usual_signal")),
                ArrivalsColumn.of(row.text("arrivals")));
    }

    private static Map<String, Boolean> feeds(String column) {
        var feeds = new TreeMap<String, Boolean>();
        for (String one : Compact.split(column, Function.identity())) {
            String[] parts = one.split(" ");
            feeds.put(parts[0], parts[1].equals("on"));
        }
        return feeds;
    }
}
