package yardlight.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;

/** H2 keeps each statement that makes a table by itself, so a start that is killed leaves some of them behind. */
class BrokenOffIT {

    private static final String EVERYTHING = "script nodata nopasswords nosettings";

    private static int number;

    @ParameterizedTest
    @CsvSource({"0, common/V1__the_record.sql", "1, h2/V2__quartz.sql"})
    void after_any_statement_the_next_start_makes_the_rest(int before, String script) throws IOException {
        List<String> statements = statements(script);
        List<String> whole = described(broken(before, List.of()));
        assertThat(statements).hasSizeGreaterThan(10);

        for (int done = 1; done <= statements.size(); done++) {
            DataSource source = broken(before, statements.subList(0, done));

            assertThat(described(source)).as("after " + done).isEqualTo(whole);
            assertThat(new JdbcTemplate(source).queryForList("select id from lane", Integer.class))
                    .containsExactly(1);
        }
    }

    /** As a start leaves it that was killed behind these statements of the version after {@code before}, and then started again. */
    private static DataSource broken(int before, List<String> done) {
        var source = new JdbcDataSource();
        source.setUrl("jdbc:h2:mem:broken-off-" + number++ + ";DB_CLOSE_DELAY=-1");
        FluentConfiguration first = flyway(source);
        (before == 0 ? first.locations("none") : first.target(String.valueOf(before)))
                .load()
                .migrate();
        done.forEach(new JdbcTemplate(source)::execute);
        flyway(source).load().migrate();
        return source;
    }

    private static FluentConfiguration flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/h2");
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
        String text = new ClassPathResource("db/migration/" + script).getContentAsString(StandardCharsets.UTF_8);
        return Stream.of(text.replaceAll("(?m)^ *--.*$", "").split(";"))
                .filter(statement -> !statement.isBlank())
                .toList();
    }
}
