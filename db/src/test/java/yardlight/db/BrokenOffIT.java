package yardlight.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;

/** H2 keeps each statement that makes a table by itself, so a start that is killed leaves some of them behind. */
class BrokenOffIT {

    private static final String EVERYTHING = "script nodata nopasswords nosettings";

    private static final String[] EVERY = {"classpath:db/migration/common", "classpath:db/migration/h2"};

    private static int number;

    @ParameterizedTest
    @MethodSource("scripts")
    void after_any_statement_the_next_start_makes_the_rest(MigrationInfo script) throws IOException {
        List<String> statements = statements(script.getScript());
        List<String> whole = described(broken(script, List.of()));
        assertThat(statements).isNotEmpty();

        for (int done = 1; done <= statements.size(); done++) {
            DataSource source = broken(script, statements.subList(0, done));

            assertThat(described(source)).as("after " + done).isEqualTo(whole);
            assertThat(new JdbcTemplate(source).queryForList("select id from lane", Integer.class))
                    .containsExactly(1);
        }
    }

    static List<MigrationInfo> scripts() {
        return List.of(flyway(source(), EVERY).info().all());
    }

    /** As a start leaves it that was killed behind these statements of a version, and then started again. */
    private static DataSource broken(MigrationInfo script, List<String> done) {
        DataSource source = source();
        List<MigrationInfo> all = scripts();
        int before = all.stream().map(MigrationInfo::getScript).toList().indexOf(script.getScript());
        if (before == 0) {
            flyway(source, "none").migrate();
        } else {
            Flyway.configure()
                    .dataSource(source)
                    .locations(EVERY)
                    .target(all.get(before - 1).getVersion())
                    .load()
                    .migrate();
        }
        done.forEach(new JdbcTemplate(source)::execute);
        flyway(source, EVERY).migrate();
        return source;
    }

    private static DataSource source() {
        var source = new JdbcDataSource();
        source.setUrl("jdbc:h2:mem:broken-off-" + number++ + ";DB_CLOSE_DELAY=-1");
        return source;
    }

    private static Flyway flyway(DataSource source, String... locations) {
        return Flyway.configure().dataSource(source).locations(locations).load();
    }

    /** The tables do not say in which order they were made, but for how many rows somebody once counted in them. */
    private static List<String> described(DataSource source) {
        return new JdbcTemplate(source)
                .queryForList(EVERYTHING, String.class).stream()
                        .filter(line -> !line.startsWith("-- "))
                        .sorted()
                        .toList();
    }

    private static List<String> statements(String script) throws IOException {
        String text = "";
        for (String location : EVERY) {
            var found = new ClassPathResource(location.substring("classpath:".length()) + "/" + script);
            text += found.exists() ? found.getContentAsString(StandardCharsets.UTF_8) : "";
        }
        return Stream.of(text.replaceAll("(?m)^ *--.*$", "").split(";"))
                .filter(statement -> !statement.isBlank())
                .toList();
    }
}
