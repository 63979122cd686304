package yardlight.db.moving;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.disk.Vendor;

/** A table or a column that is new needs somebody to decide whether it moves. */
class TablesIT {

    private static final String TABLES =
            "select lower(table_name) from information_schema.tables where lower(table_schema) = 'public'";

    @ParameterizedTest
    @EnumSource
    void every_table_moves_or_stays_and_none_does_both(TestDatabase database) {
        List<String> tables = new JdbcTemplate(database.newDataSource()).queryForList(TABLES, String.class);

        var decided = new ArrayList<>(Tables.MOVING);
        decided.addAll(Tables.STAYING.keySet());
        assertThat(decided).doesNotHaveDuplicates();
        assertThat(tables)
                .filteredOn(table -> !table.startsWith(Tables.STAYING_PREFIX))
                .containsExactlyInAnyOrderElementsOf(decided);
    }

    @ParameterizedTest
    @EnumSource
    void a_row_comes_after_the_one_that_it_refers_to(TestDatabase database) throws SQLException {
        try (Connection connection = database.newDataSource().getConnection()) {
            for (String table : Tables.MOVING) {
                for (String needed : references(connection, table)) {
                    assertThat(Tables.MOVING.subList(0, Tables.MOVING.indexOf(table)))
                            .as(table)
                            .contains(needed);
                }
            }
        }
    }

    /** Else a crate of the one would not fit into the other. */
    @Test
    void both_databases_have_the_same_columns_but_for_those_that_stay() throws SQLException {
        try (Connection h2 = TestDatabase.H2.newDataSource().getConnection();
                Connection postgres = TestDatabase.POSTGRESQL.newDataSource().getConnection()) {
            for (String table : Tables.MOVING) {
                assertThat(MovedTable.of(postgres, table).header())
                        .as(table)
                        .isEqualTo(MovedTable.of(h2, table).header());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_database_of_this_release_has_all_versions_that_it_knows(TestDatabase database) throws SQLException {
        try (Connection connection = database.newDataSource().getConnection()) {
            Set<Integer> applied = SchemaVersion.applied(connection);

            assertThat(applied)
                    .isEqualTo(SchemaVersion.known(Vendor.valueOf(database.name())))
                    .contains(SchemaVersion.newestCommon());
            assertThat(SchemaVersion.newestKnown()).isGreaterThanOrEqualTo(SchemaVersion.newestCommon());
        }
    }

    private static List<String> references(Connection connection, String table) throws SQLException {
        var needed = new ArrayList<String>();
        String name = connection.getMetaData().storesUpperCaseIdentifiers() ? table.toUpperCase(Locale.ROOT) : table;
        try (ResultSet keys = connection.getMetaData().getImportedKeys(null, null, name)) {
            while (keys.next()) {
                needed.add(keys.getString("PKTABLE_NAME").toLowerCase(Locale.ROOT));
            }
        }
        return needed;
    }
}
