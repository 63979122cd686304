package yardlight.db.swap;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.columns.SwapColumns;
import yardlight.escalation.swap.Offer;

/** Turns that somebody asked others to take. */
@Repository
public class Swaps {

    /** A code comes back only after all others; who answers later than this means something else. */
    private static final Duration REMEMBERED = Duration.ofDays(14);

    private final JdbcTemplate jdbc;

    Swaps(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest of the last two weeks with this code that the contact asked for, or was asked for; open or not. */
    public Optional<Offer> withCode(int code, String contact, Instant now) {
        return find("asked_at > ? and code = ? order by asked_at desc", Column.stored(now.minus(REMEMBERED)), code)
                .stream()
                .filter(offer -> offer.by().equals(contact) || offer.asked().contains(contact))
                .findFirst();
    }

    /** Those that can still be taken, the one first that ends first. */
    public List<Offer> open(Instant now) {
        return find("open_in > '' and expires_at > ? order by expires_at, id", Column.stored(now));
    }

    private List<Offer> find(String which, Object... values) {
        return jdbc.query(
                SwapColumns.TABLE.select() + " where " + which, (rows, n) -> SwapColumns.read(new Row(rows)), values);
    }
}
