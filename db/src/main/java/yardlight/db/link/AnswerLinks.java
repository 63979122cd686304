package yardlight.db.link;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.disk.Disk;

/** The links of all texts. One need not be kept before it is used: a signed token says itself what it is. */
@Repository
public class AnswerLinks {

    private static final String SELECT =
            "select token_hash, notice, expires_at, used_at from link where token_hash = ?";
    private static final String ADD = "insert into link (token_hash, notice, expires_at) values (?, ?, ?)";
    private static final String USE =
            "update link set used_at = ? where token_hash = ? and used_at is null and expires_at > ?";

    private final JdbcTemplate jdbc;
    private final Disk disk;

    AnswerLinks(JdbcTemplate jdbc, Disk disk) {
        this.jdbc = jdbc;
        this.disk = disk;
    }

    public Optional<AnswerLink> byHash(String tokenHash) {
        return jdbc.query(SELECT, AnswerLinks::read, tokenHash).stream().findFirst();
    }

    /** Keeps the link unless it is kept already; on disk when it returns. */
    public void keep(String tokenHash, String notice, Instant expiresAt) {
        disk.keep(() ->
                byHash(tokenHash).isPresent() ? 0 : jdbc.update(ADD, tokenHash, notice, Column.stored(expiresAt)));
    }

    /**
     * Uses the link up; on disk when it returns. Of several calls at once one gets true.
     *
     * @return false when there is no such link, when it was used before, or when it expires at or before {@code now}
     */
    public boolean use(String tokenHash, Instant now) {
        Object at = Column.stored(now);
        return disk.keep(() -> jdbc.update(USE, at, tokenHash, at)) > 0;
    }

    private static AnswerLink read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new AnswerLink(
                row.text("token_hash"), row.text("notice"), row.time("expires_at"), row.maybeTime("used_at"));
    }
}
