package yardlight.db.outbox;

import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.Row;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Which carriers count as down, whichever gateway found it out, and whether or not it still runs. */
public final class DownCarriers {

    private static final String AT_THE_GATEWAY =
            AlarmColumns.TABLE.select() + " where live_site = '" + Site.GATEWAY + "'";

    private final JdbcTemplate jdbc;

    DownCarriers(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The names of their channels. */
    public Set<String> channels() {
        return jdbc.query(AT_THE_GATEWAY, (rows, number) -> AlarmColumns.read(new Row(rows))).stream()
                .filter(alarm -> alarm.key().equals(Setup.carrier(alarm.key().point())))
                .filter(Alarm::reported)
                .map(alarm -> alarm.key().point())
                .collect(Collectors.toSet());
    }
}
