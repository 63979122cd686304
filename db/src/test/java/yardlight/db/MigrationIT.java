package yardlight.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.flywaydb.core.api.FlywayException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;

class MigrationIT {

    private static final String TABLES = """
        select lower(table_name) from information_schema.tables
        where lower(table_schema) = 'public' and lower(table_name) not like '%qrtz%'
        """;

    private static final List<String> EXPECTED = List.of(
            "flyway_schema_history",
            "lane",
            "setup_version",
            "event",
            "alarm",
            "callout",
            "notice",
            "notice_callout",
            "outbox",
            "attempt",
            "desk",
            "site_state",
            "box_watch",
            "due",
            "log_line",
            "log_tile",
            "sent_head",
            "link",
            "person",
            "box_key",
            "secret",
            "incoming_text",
            "receipt",
            "line_health",
            "silence",
            "gauge",
            "shut_in",
            "swap",
            "calendar_feed",
            "signed_post",
            "invitation",
            "device",
            "sitting",
            "passkey_handle",
            "passkey",
            "reading_series",
            "reading",
            "reading_day");

    @ParameterizedTest
    @EnumSource
    void gives_the_same_tables_on_both_databases(TestDatabase database) {
        List<String> tables = new JdbcTemplate(database.newDataSource()).queryForList(TABLES, String.class);

        assertThat(tables).containsExactlyInAnyOrderElementsOf(EXPECTED);
    }

    @ParameterizedTest
    @EnumSource
    void refuses_a_database_whose_tables_were_changed_by_hand(TestDatabase database) {
        String url = database.newUrl();
        var jdbc = new JdbcTemplate(database.migrated(url));
        jdbc.update("update \"flyway_schema_history\" set \"checksum\" = 1 where \"version\" = '1'");

        assertThatThrownBy(() -> database.migrated(url))
                .isInstanceOf(FlywayException.class)
                .hasMessageContaining("checksum mismatch");
    }
}
