package yardlight.gateway.restore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.channels.Attempt;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.db.backup.Restore;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** What becomes of the calls and the notices in a backup that is put in place. */
class RestorationIT {

    /** No more than a person gets one by one. */
    private static final int ALARMS = 4;

    @TempDir
    private Path home;

    private List<String> waiting;

    @Test
    void sends_nothing_again_that_was_waiting_and_goes_on_with_every_call() {
        restore(backUpWithEverythingWaiting());
        FakeChannel texts = FakeChannel.named("sms-mail");

        try (SmallGateway gateway = start(texts, Duration.ofSeconds(2))) {
            await().atMost(Duration.ofSeconds(20)).until(() -> toAna(texts) == ALARMS);

            assertThat(texts.tried()).extracting(Message::id).doesNotContainAnyElementsOf(waiting);
            assertThat(waiting).hasSize(ALARMS);
            assertThat(count(gateway, "attempt where detail like 'a backup was restored%'"))
                    .isEqualTo(ALARMS);
        }
    }

    @Test
    void says_in_the_log_from_what_and_which_lines_are_missing_and_says_it_once() {
        restore(backUpWithEverythingWaiting());

        start(FakeChannel.named("sms-mail"), Duration.ofMinutes(9)).close();
        try (SmallGateway gateway = start(FakeChannel.named("sms-mail"), Duration.ofMinutes(9))) {
            List<String> words =
                    gateway.jdbc().queryForList("select words from log_line where what = 'restore'", String.class);
            String last = gateway.jdbc()
                    .queryForObject(
                            "select max(line) from log_line where line <"
                                    + " (select min(line) from log_line where what = 'restore')",
                            String.class);

            assertThat(words)
                    .singleElement()
                    .asString()
                    .startsWith("restored from backup.zip: what was recorded after line " + last + " of 20")
                    .contains("is missing here", "the database before it is in yardlight.aside-1.mv.db");
        }
    }

    @Test
    void sends_what_no_call_would_make_up_for() {
        restore(backUpWithEverythingWaiting());
        try (var source = TestDatabase.H2.migrated(url())) {
            new JdbcTemplate(source).update("delete from due where kind = 'callout'");
        }
        FakeChannel texts = FakeChannel.named("sms-mail");

        try (SmallGateway gateway = start(texts, Duration.ofMinutes(9))) {
            await().atMost(Duration.ofSeconds(20)).until(() -> texts.taken().size() == ALARMS);

            assertThat(count(gateway, "log_line where what = 'restore'")).isEqualTo(1);
        }
    }

    /** A carrier that puts everything off, alarms, a backup, and one more alarm after it. */
    private Path backUpWithEverythingWaiting() {
        Path zip = home.resolve("backup.zip");
        FakeChannel away = FakeChannel.named("sms-mail").answering(Attempt.deferred("451 later"));
        try (SmallGateway gateway = start(away, Duration.ofMinutes(9))) {
            for (int i = 0; i < ALARMS; i++) {
                gateway.critical(new AlarmKey("mesa-9", "point-" + i, "high"));
            }
            await().until(() -> count(gateway, "attempt") == ALARMS);
            waiting = gateway.jdbc().queryForList("select notice from outbox", String.class);
            gateway.jdbc().execute("backup to '" + zip + "'");
            gateway.critical(new AlarmKey("mesa-9", "after-the-backup", "high"));
        }
        return zip;
    }

    private void restore(Path zip) {
        assertThat(new Restore(home.resolve("yardlight"), "sa", "").from(zip)).isPresent();
        // The rungs that were to wait nine minutes are over by then. A gateway that runs would put the times right
        // again.
        try (var source = TestDatabase.H2.migrated(url())) {
            var jdbc = new JdbcTemplate(source);
            jdbc.update("update callout set due_at = current_timestamp");
            jdbc.update("update due set due_at = current_timestamp, ready_at = current_timestamp");
        }
    }

    private static long toAna(FakeChannel texts) {
        return texts.taken().stream()
                .filter(text -> text.address().startsWith("5755550101"))
                .count();
    }

    private SmallGateway start(FakeChannel texts, Duration wait) {
        return new SmallGateway(
                TestDatabase.H2, url(), setup(wait), List.of(texts), "lane", "due", "dispatch", "restore");
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }

    private static long count(SmallGateway gateway, String what) {
        return gateway.jdbc().queryForObject("select count(*) from " + what, Long.class);
    }

    /** Ben, then Ana. */
    private static Setup setup(Duration wait) {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of("ben"), wait, 1), new Rung(List.of("ana"), Duration.ofMinutes(9), 1)),
                0);
        return Fixtures.calling(ladder);
    }
}
