package yardlight.db.columns;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;

/** Asks for the rows of many ids, a thousand at a time, so that neither database has to hold a hundred thousand of them at once. */
public final class Slices {

    /** How many ids are in one query. */
    public static final int SIZE = 1000;

    private Slices() {}

    /**
     * @param sql with one parameter, an array of texts, as {@link Table#WANTED} has it
     * @param ids a double one counts once
     * @return the rows in the order of the query, slice by slice; none, without a query, when there are no ids
     */
    public static <T> List<T> query(JdbcTemplate jdbc, String sql, Collection<String> ids, RowMapper<T> mapper) {
        List<String> all = ids.stream().distinct().toList();
        var found = new ArrayList<T>();
        for (int from = 0; from < all.size(); from += SIZE) {
            String[] slice =
                    all.subList(from, Math.min(all.size(), from + SIZE)).toArray(String[]::new);
            found.addAll(jdbc.query(
                    sql,
                    statement -> statement.setArray(1, statement.getConnection().createArrayOf("varchar", slice)),
                    mapper));
        }
        return found;
    }
}
