package yardlight.db.shutin;

import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.columns.ShutInColumns;
import yardlight.escalation.shutin.Standing;

/** How each site stands with being asked to shut in. */
@Repository
public class ShutIns {

    private final JdbcTemplate jdbc;

    ShutIns(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** A site of which nothing is known is off. */
    public Standing of(String site) {
        return find("site = ?", site).stream().findFirst().orElseGet(() -> Standing.none(site));
    }

    /** Those with a request that is still to go to a relay. */
    public List<Standing> forRelays() {
        return find("way = 'relay' and state in ('asked', 'trying', 'uncertain')");
    }

    /** Those at which this contact has yet to send back a code. */
    public List<Standing> wished(String contact, Instant now) {
        return find("wish_contact = ? and wish_until > ?", contact, Column.stored(now));
    }

    private List<Standing> find(String which, Object... values) {
        return jdbc.query(
                ShutInColumns.TABLE.select() + " where " + which,
                (rows, n) -> ShutInColumns.read(new Row(rows)),
                values);
    }
}
