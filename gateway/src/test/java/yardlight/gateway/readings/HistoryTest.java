package yardlight.gateway.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.reading.Slot;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

@GatewayTest
class HistoryTest {

    private final Doors doors;
    private final JdbcTemplate jdbc;

    HistoryTest(Doors doors, JdbcTemplate jdbc) {
        this.doors = doors;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void store() {
        jdbc.update("insert into reading_series values (77, 'mesa-9', 'flow-line', 'psi', 0)");
        for (int minute = 0; minute < 10; minute++) {
            put(TestGateway.NOW.minusSeconds(60L * minute + 60), 40 + minute);
        }
    }

    @AfterEach
    void clear() {
        jdbc.update("delete from reading");
        jdbc.update("delete from reading_series");
    }

    @Test
    void is_given_back_as_it_was_measured() {
        assertThat(get("site=mesa-9&point=flow-line&from=2026-11-25T08:11:00Z"))
                .hasStatus(200)
                .bodyJson()
                .isStrictlyEqualTo("""
                        {"site": "mesa-9", "point": "flow-line", "unit": "psi",
                         "from": "2026-11-25T08:11:00Z", "to": "2026-11-25T08:13:00Z",
                         "samples": [{"at": "2026-11-25T08:11:00Z", "value": 41.0}, {"at": "2026-11-25T08:12:00Z", "value": 40.0}]}
                        """);
    }

    @Test
    void of_more_than_is_wanted_is_given_as_smallest_largest_mean_and_count() {
        MvcTestResult result = get("site=mesa-9&point=flow-line&from=2026-11-25T08:03:00Z&points=2");

        assertThat(result).bodyJson().extractingPath("$.samples").asArray().hasSize(2);
        assertThat(result)
                .bodyJson()
                .extractingPath("$.samples[0]")
                .isEqualTo(java.util.Map.of(
                        "at", "2026-11-25T08:03:00Z", "min", 45.0, "max", 49.0, "mean", 47.0, "count", 5));
    }

    @Test
    void is_the_last_day_unless_somebody_says_and_empty_where_nothing_was_measured() {
        assertThat(get("site=mesa-9&point=flow-line"))
                .bodyJson()
                .extractingPath("$.samples.length()")
                .isEqualTo(10);
        assertThat(get("site=mesa-9&point=nothing"))
                .bodyJson()
                .extractingPath("$.samples.length()")
                .isEqualTo(0);
        assertThat(get("site=mesa-9&point=flow-line&from=1970-01-01T00:00:00Z&to=9999-01-01T00:00:00Z"))
                .bodyJson()
                .extractingPath("$.samples.length()")
                .isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({
        "point=a, site",
        "site=mesa-9, point",
        "site=mesa-9&point=a&points=0, points",
        "site=mesa-9&point=a&points=5001, points",
        "site=mesa-9&point=a&points=many, points",
        "site=mesa-9&point=a&from=yesterday, from",
        "site=mesa-9&point=a&to=1, to",
        "site=mesa-9&point=a&from=2026-11-25T08:13:00Z, from"
    })
    void is_refused_with_the_parameter_that_is_wrong(String query, String parameter) {
        assertThat(get(query))
                .hasStatus(422)
                .bodyJson()
                .extractingPath("$.errors[0].parameter")
                .isEqualTo(parameter);
    }

    private void put(Instant at, double value) {
        jdbc.update("insert into reading values (?, ?)", Slot.of(77, at), value);
    }

    private MvcTestResult get(String query) {
        return doors.as("reader", HttpMethod.GET, "/api/v1/readings?" + query).exchange();
    }
}
