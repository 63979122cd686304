package yardlight.db.alarm;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.BoxColumns;
import yardlight.db.columns.Row;
import yardlight.db.columns.Slices;
import yardlight.escalation.heartbeat.BoxWatch;

/** When boxes were heard last and what they said. */
@Repository
public class HeardBoxes {

    private static final String OF = BoxColumns.TABLE.among("box");

    private final JdbcTemplate jdbc;

    HeardBoxes(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** One box; empty when it was never heard. */
    public Optional<BoxWatch> byId(String box) {
        return jdbc
                .query(BoxColumns.TABLE.select() + " where box = ?", (rows, n) -> BoxColumns.read(new Row(rows)), box)
                .stream()
                .findFirst();
    }

    /** Those of these boxes that were ever heard, by id. */
    public Map<String, BoxWatch> of(Collection<String> boxes) {
        return Slices.query(jdbc, OF, boxes, (rows, n) -> BoxColumns.read(new Row(rows))).stream()
                .collect(Collectors.toMap(BoxWatch::box, Function.identity()));
    }

    /** All boxes that were ever heard, by id. */
    public Map<String, BoxWatch> all() {
        return jdbc.query(BoxColumns.TABLE.select(), (rows, n) -> BoxColumns.read(new Row(rows))).stream()
                .collect(Collectors.toMap(BoxWatch::box, Function.identity()));
    }
}
