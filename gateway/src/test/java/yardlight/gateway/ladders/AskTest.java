package yardlight.gateway.ladders;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Setup;

class AskTest {

    private static final Setup SETUP = Fixtures.theSetup();

    @Test
    void is_about_the_deep_of_the_night_that_comes_next() {
        assertThat(Ask.usual(SETUP, "mesa-9", Fixtures.at("2026-11-25T02:09")).at())
                .isEqualTo("2026-11-25T02:10");
        assertThat(Ask.usual(SETUP, "mesa-9", Fixtures.at("2026-11-25T02:10")).at())
                .isEqualTo("2026-11-26T02:10");
        assertThat(Ask.usual(SETUP, "mesa-9", Fixtures.at("2026-11-25T14:00")).where())
                .isEqualTo("mesa-9/water-tank");
    }

    @ParameterizedTest
    @CsvSource({
        "mesa-9/water-tank, high-high, '',       2026-11-25T02:10, ''",
        "mesa-9/unheard-of, high-high, critical, 2026-11-25T02:10, ''",
        "mesa-10/tank,      high-high, '',       2026-11-25T02:10, where",
        "mesa-9,            high-high, '',       2026-11-25T02:10, where",
        "mesa-9/a/b,        high-high, '',       2026-11-25T02:10, where",
        "mesa-9/water-tank, High!,     '',       2026-11-25T02:10, condition",
        "mesa-9/water-tank, high-high, urgent,   2026-11-25T02:10, priority",
        "mesa-9/water-tank, high-high, '',       tonight,          at",
        "mesa-9/water-tank, high-high, '',       +99999-01-01T00:00, at"
    })
    void is_refused_field_by_field(String where, String condition, String priority, String at, String wrong) {
        assertThat(String.join(
                        " ",
                        new Ask(where, condition, priority, at).mistakes(SETUP).keySet()))
                .isEqualTo(wrong);
    }

    @Test
    void is_by_the_clock_of_the_site() {
        var ask = new Ask("mesa-9/water-tank", "high-high", "critical", "2026-11-25T02:10");

        assertThat(ask.question(Fixtures.CHICAGO).at()).isEqualTo(Instant.parse("2026-11-25T08:10:00Z"));
        assertThat(ask.question(Fixtures.CHICAGO).key()).isEqualTo(Fixtures.TANK);
    }
}
