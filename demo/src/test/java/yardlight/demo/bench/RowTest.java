package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RowTest {

    @Test
    void shows_the_figure_its_limit_and_the_ratio_of_the_two() {
        assertThat(Row.of("events a second", 6676, "bare", 12987))
                .hasToString("| events a second | 6,676 | bare: 12,987 | 0.51 | – |");
    }

    @Test
    void has_no_ratio_without_a_limit() {
        assertThat(Row.of("resident, MB", 268.4)).hasToString("| resident, MB | 268 | – | – | – |");
        assertThat(Row.of("p50, ms", 1, "bare", 0).ratio()).isEmpty();
    }

    @Test
    void says_what_it_should_be() {
        assertThat(Row.of("events a second", 500, "bare", 1000).aim("at least 0.30"))
                .hasToString("| events a second | 500 | bare: 1,000 | 0.50 | at least 0.30 |");
    }

    @Test
    void fits_under_the_head_of_the_table() {
        int columns = Row.HEAD.lines().findFirst().orElseThrow().split("\\|").length;

        assertThat(Row.of("a", 1, "b", 2).toString().split("\\|")).hasSize(columns);
    }
}
