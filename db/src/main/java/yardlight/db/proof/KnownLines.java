package yardlight.db.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.LineColumns;
import yardlight.db.columns.Row;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;

/** Reads what is known of lines. What it costs grows with the number of lines, and not with what went out by them. */
@Repository
public class KnownLines {

    private static final String OF = LineColumns.TABLE.select() + " where contact = ?";

    /** What was sent without an answer may have got there as well. */
    private static final String WAYS = "select distinct line, channel from attempt where notice = ?"
            + " and outcome in ('accepted', 'unknown') and line is not null";

    private record Way(int line, String channel) {}

    private final JdbcTemplate jdbc;

    KnownLines(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** What is known of all lines that anything is known of, also of such as are not in use any more. */
    public Map<LineHealth.Key, LineHealth> all() {
        return byKey(jdbc.query(LineColumns.TABLE.select(), (rows, n) -> LineColumns.read(new Row(rows))));
    }

    /** What is known of each line of a contact, in the contact's order. */
    public List<LineHealth> of(Contact contact) {
        return of(contact, byKey(jdbc.query(OF, (rows, n) -> LineColumns.read(new Row(rows)), contact.id())));
    }

    /** The same, out of what was read before. */
    public static List<LineHealth> of(Contact contact, Map<LineHealth.Key, LineHealth> known) {
        return contact.lines().stream()
                .map(line -> new LineHealth.Key(contact.id(), line.channel(), line.address()))
                .map(key -> known.getOrDefault(key, LineHealth.unknown(key)))
                .toList();
    }

    /** The place of the one line by which a notice can have got to the contact; empty when it can have been several. */
    public Optional<Integer> way(String notice, Contact contact) {
        List<Way> ways = jdbc.query(WAYS, (rows, n) -> new Way(rows.getInt("line"), rows.getString("channel")), notice);
        return ways.size() == 1
                ? ways.stream()
                        .filter(way -> way.line() < contact.lines().size())
                        .filter(way -> contact.lines().get(way.line()).channel().equals(way.channel()))
                        .map(Way::line)
                        .findFirst()
                : Optional.empty();
    }

    private static Map<LineHealth.Key, LineHealth> byKey(List<LineHealth> lines) {
        return lines.stream().collect(Collectors.toMap(LineHealth::key, Function.identity()));
    }
}
