package yardlight.db.setup;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Row;

/** Reads the setup document as it is and as it was. */
@Repository
public class SetupVersions {

    private final SetupVersionRows rows;
    private final JdbcTemplate jdbc;

    SetupVersions(SetupVersionRows rows, JdbcTemplate jdbc) {
        this.rows = rows;
        this.jdbc = jdbc;
    }

    /** The one that holds; empty before the first. */
    public Optional<SetupVersion> newest() {
        return rows.newest().map(SetupVersionRow::version);
    }

    public Optional<SetupVersion> byVersion(int version) {
        return rows.findById(version).map(SetupVersionRow::version);
    }

    /** Those from this version to that, both included, as far as they are there; by version. */
    public List<SetupVersion> between(int first, int last) {
        return rows.between(first, last).stream().map(SetupVersionRow::version).toList();
    }

    /**
     * The newest ones without their documents, newest first.
     *
     * @param before only versions below this one
     */
    public List<SetupEdit> edits(int before, int most) {
        return jdbc.query(
                "select version, stored_at, stored_by from setup_version where version < ? order by version desc limit ?",
                (found, n) -> edit(new Row(found)),
                before,
                most);
    }

    private static SetupEdit edit(Row row) throws SQLException {
        return new SetupEdit(row.number("version"), row.time("stored_at"), row.text("stored_by"));
    }
}
