package yardlight.db.setup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Row;

/** Reads the setup document as it is and as it was. */
@Repository
public class SetupVersions {

    private static final String SELECT = "select version, document, stored_at, stored_by from setup_version";
    private static final String NEWEST = SELECT + " order by version desc fetch first 1 row only";

    private final JdbcTemplate jdbc;

    SetupVersions(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The one that holds; empty before the first. */
    public Optional<SetupVersion> newest() {
        return jdbc.query(NEWEST, SetupVersions::read).stream().findFirst();
    }

    public Optional<SetupVersion> byVersion(int version) {
        return jdbc.query(SELECT + " where version = ?", SetupVersions::read, version).stream()
                .findFirst();
    }

    private static SetupVersion read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new SetupVersion(
                row.number("version"), row.text("document"), row.time("stored_at"), row.text("stored_by"));
    }
}
