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
        assertThat(outbox.wanted(claimed)).isTrue();

        jdbc.update("update notice set line = 1");
        assertThat(outbox.wanted(claimed)).isFalse();

        jdbc.update("update notice set line = 0, state = 'cancelled'");
        assertThat(outbox.wanted(claimed)).isFalse();
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

    @Test
    void hands_out_a_notice_for_another_line_while_the_line_before_still_has_it() {
        queued("a", "sms-mail", NOW.minusSeconds(30));
        Outgoing first = outbox.claim("sms-mail", NOW, 1).get(0);
        jdbc.update("delete from outbox");
        jdbc.update("update notice set line = 1");
        inOutbox("a", "mail", NOW);

        Outgoing second = outbox.claim("mail", NOW, 1).get(0);
        assertThat(second.notice().line()).isEqualTo(1);

        assertThat(outbox.wanted(first)).isFalse();
        outbox.giveBack(first);
        assertThat(outbox.claim("mail", NOW, 1)).isEmpty();
        assertThat(outbox.wanted(second)).isTrue();
    }

    @Test
    void shows_what_has_been_waiting_for_long_claimed_or_not() {
        queued("late", "mail", NOW.minusSeconds(31));
        queued("later", "sms-mail", NOW.minusSeconds(30));
        queued("not-yet", "mail", NOW.minusSeconds(29));
        queued("seen", "mail", NOW.minusSeconds(40));
        outbox.claim("mail", NOW, 10);

        assertThat(outbox.waiting(NOW.minusSeconds(40), NOW.minusSeconds(30), 10))
                .extracting(Outgoing::id)
                .containsExactly("late", "later");
        assertThat(outbox.waiting(NOW.minusSeconds(40), NOW.minusSeconds(30), 1))
                .hasSize(1);
    }

    @Test
    void knows_when_the_next_rung_is_due() {
        queued("a", "mail", NOW);
        Outgoing outgoing = outbox.claim("mail", NOW, 1).get(0);
        assertThat(outbox.nextRung(outgoing)).isEmpty();

        callout("c-1", NOW.plusSeconds(300));
        callout("c-2", NOW.plusSeconds(60));

        assertThat(outbox.nextRung(outgoing)).contains(NOW.plusSeconds(60));
    }

    private void callout(String id, Instant due) {
        jdbc.update(
                "insert into callout (id, kind, code, site, ladder, priority, alarms, started_at, notices, announced,"
                        + " told, held, climb, rung, round, due_at)"
                        + " values (?, 'calling', 10, 'mesa-9', 'night', 'high', '', ?, 1, 1, '', '', 0, 0, 0, ?)",
                id,
                Column.stored(NOW),
                Column.stored(due));
        jdbc.update("insert into notice_callout (notice, callout) values ('a', ?)", id);
    }

    void queued(String id, String channel, Instant at) {
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                        + " values (?, 'ana', 'c-1;c-2', 'high', 'MESA 9 WATER TANK HIGH-HIGH', 'queued', ?, 0)",
                id,
                Column.stored(at));
        inOutbox(id, channel, at);
    }

    private void inOutbox(String id, String channel, Instant at) {
        jdbc.update(
                "insert into outbox (notice, channel, ready_at, queued_at, deferrals, doubts) values (?, ?, ?, ?, 0, 0)",
                id,
                channel,
                Column.stored(at),
                Column.stored(at));
    }
}
