package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.alarm.Told;
import yardlight.db.columns.Column;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.link.Tokens;

@GatewayTest
class RecentNoticesTest {

    private static final Instant NOW = TestGateway.NOW;
    private static final Instant BACK = NOW.minus(Duration.ofHours(10));

    private final Tokens tokens;
    private final JdbcTemplate jdbc;
    private final RecentNotices recent;

    RecentNoticesTest(Told told, Tokens tokens, JdbcTemplate jdbc) {
        this.tokens = tokens;
        this.jdbc = jdbc;
        this.recent = new RecentNotices(told, tokens);
    }

    @BeforeEach
    void made_before_the_clock_was_set_back() {
        made("recent.1", NOW);
        assertThat(recent.byHash(tokens.hashFor("recent.1", NOW), NOW)).isPresent();
    }

    @AfterEach
    void remove() {
        jdbc.update("delete from notice where id like 'recent.%'");
    }

    @Test
    void are_found_when_they_were_made_after_the_clock_was_set_back() {
        made("recent.2", BACK);

        assertThat(recent.byHash(tokens.hashFor("recent.2", NOW), BACK)).isPresent();
        assertThat(recent.byHash(tokens.hashFor("recent.1", NOW), BACK)).isPresent();
    }

    @Test
    void are_found_when_a_gateway_whose_clock_is_behind_made_them() {
        made("recent.3", NOW.minusSeconds(30));

        assertThat(recent.byHash(tokens.hashFor("recent.3", NOW), NOW.plusSeconds(1)))
                .isPresent();
    }

    @Test
    void are_read_again_for_guesses_once_a_minute_only() {
        recent.byHash(tokens.hashFor("guess", NOW), NOW);
        made("recent.4", NOW.minusSeconds(30));

        assertThat(recent.byHash(tokens.hashFor("recent.4", NOW), NOW.plusSeconds(59)))
                .isEmpty();
        assertThat(recent.byHash(tokens.hashFor("recent.4", NOW), NOW.plusSeconds(60)))
                .isPresent();
    }

    /** Otherwise those of a year would be in memory in the end. */
    @Test
    void are_forgotten_when_their_links_have_ended() {
        Instant end = NOW.plus(Tokens.LIFE);

        assertThat(recent.byHash(tokens.hashFor("recent.1", NOW), end)).isPresent();
        assertThat(recent.byHash(tokens.hashFor("recent.1", NOW), end.plusMillis(1)))
                .isEmpty();
    }

    private void made(String id, Instant at) {
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                        + " values (?, 'ana', 'c.1', 'high', 'TANK HIGH', 'queued', ?, 0)",
                id,
                Column.stored(at));
    }
}
