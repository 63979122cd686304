package yardlight.db.columns;

import java.util.Objects;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Reads what may be long without holding all of it. */
public final class RowByRow {

    /** Common practice, no source: few ways to the database, and little memory. */
    static final int AT_ONCE = 500;

    private RowByRow() {}

    /**
     * Hands over one row after the other. PostgreSQL's driver holds so many rows only inside a transaction; outside of one
     * it fetches the whole answer first (its documentation, "Getting results based on a cursor").
     */
    public static void each(JdbcTemplate jdbc, String sql, RowCallbackHandler reader, Object... values) {
        DataSource source = Objects.requireNonNull(jdbc.getDataSource());
        var transaction = new TransactionTemplate(new JdbcTransactionManager(source));
        transaction.setReadOnly(true);
        var few = new JdbcTemplate(source);
        few.setFetchSize(AT_ONCE);
        transaction.executeWithoutResult(status -> few.query(sql, reader, values));
    }
}
