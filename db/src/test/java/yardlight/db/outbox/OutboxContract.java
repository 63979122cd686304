package yardlight.db.outbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;

/** What the outbox has to do on every database. */
abstract class OutboxContract {

    static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    JdbcTemplate jdbc;
    private Outbox outbox;

    abstract TestDatabase database();

    abstract Outbox outbox(JdbcTemplate jdbc);

    @BeforeEach
    void open() {
        jdbc = new JdbcTemplate(database().newDataSource());
        outbox = outbox(jdbc);
    }

    @Test
    void hands_out_what_may_be_sent_now_by_one_channel_the_longest_waiting_first() {
        queued("second", "mail", NOW.minusSeconds(5));
        queued("first", "mail", NOW.minusSeconds(9));
        queued("not-yet", "mail", NOW.plusMillis(1));
        queued("by-text", "sms-mail", NOW.minusSeconds(9));

        assertThat(outbox.claim("mail", NOW, 10)).extracting(Outgoing::id).containsExactly("first", "second");
    }

    @Test
    void does_not_hand_out_twice_what_is_claimed_until_it_is_given_back() {
        queued("a", "mail", NOW.minusSeconds(9));
        queued("b", "mail", NOW.minusSeconds(5));

        Outgoing a = outbox.claim("mail", NOW, 1).get(0);
        assertThat(outbox.claim("mail", NOW, 10)).extracting(Outgoing::id).containsExactly("b");

        outbox.giveBack(a);
        assertThat(outbox.claim("mail", NOW, 10)).containsExactly(a);
    }

    @Test
    void hands_out_what_no_known_channel_takes() {
        queued("a", "mail", NOW);
        queued("b", "pager", NOW);

        assertThat(outbox.claimOthers(List.of("mail", "sms-mail"), NOW, 10))
                .extracting(Outgoing::id)
                .containsExactly("b");
        assertThat(outbox.claimOthers(List.of(), NOW, 10))
                .extracting(Outgoing::id)
                .containsExactly("a");
    }

    @Test
    void knows_what_is_not_wanted_any_more() {
        queued("a", "mail", NOW);
        Outgoing claimed = outbox.claim("mail", NOW, 1).get(0);
        assertThat(outbox.wanted(claimed, NOW)).isTrue();

        jdbc.update("update notice set line = 1");
        assertThat(outbox.wanted(claimed, NOW)).isFalse();

        jdbc.update("update notice set line = 0, state = 'cancelled'");
        assertThat(outbox.wanted(claimed, NOW)).isFalse();
    }

    @Test
    void tells_everything_that_is_needed_to_send() {
        queued("a", "mail", NOW.minusSeconds(9));
        jdbc.update("update outbox set deferrals = 2, doubts = 1");

        Outgoing outgoing = outbox.claim("mail", NOW, 1).get(0);

        assertThat(outgoing.deferrals()).isEqualTo(2);
        assertThat(outgoing.doubts()).isEqualTo(1);
        assertThat(outgoing.queuedAt()).isEqualTo(NOW.minusSeconds(9));
        assertThat(outgoing.notice().text()).isEqualTo("MESA 9 WATER TANK HIGH-HIGH");
        assertThat(outgoing.notice().callouts()).containsExactly("c-1", "c-2");
    }

    @Test
    void knows_when_there_is_something_to_send_next() {
        assertThat(outbox.next(NOW)).isEmpty();

        queued("a", "mail", NOW.plusSeconds(5));
        queued("b", "sms-mail", NOW.plusSeconds(3));

        assertThat(outbox.next(NOW)).contains(NOW.plusSeconds(3));
    }

    void queued(String id, String channel, Instant at) {
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                        + " values (?, 'ana', 'c-1;c-2', 'high', 'MESA 9 WATER TANK HIGH-HIGH', 'queued', ?, 0)",
                id,
                Column.stored(at));
        jdbc.update(
                "insert into outbox (notice, channel, ready_at, queued_at, deferrals, doubts) values (?, ?, ?, ?, 0, 0)",
                id,
                channel,
                Column.stored(at),
                Column.stored(at));
    }
}
