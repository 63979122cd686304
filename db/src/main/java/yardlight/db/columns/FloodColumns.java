package yardlight.db.columns;

import static yardlight.db.columns.Column.flag;
import static yardlight.db.columns.Column.text;

import java.sql.SQLException;
import java.util.List;
import yardlight.escalation.alarm.Flood;

/** Whether a site is in an alarm flood. */
public final class FloodColumns {

    public record SiteFlood(String site, Flood flood) {}

    public static final Table<SiteFlood> TABLE = Table.of(
            "site_state",
            List.of(
                    text("site", SiteFlood::site),
                    text("recent", row -> Compact.instants(row.flood().recent())),
                    flag("flood", row -> row.flood().on())));

    private FloodColumns() {}

    public static SiteFlood read(Row row) throws SQLException {
        return new SiteFlood(row.text("site"), new Flood(Compact.instants(row.text("recent")), row.flag("flood")));
    }
}
