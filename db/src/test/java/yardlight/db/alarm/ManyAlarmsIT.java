package yardlight.db.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Slices;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/** More alarms at once than are asked for in one query: one at each site, all of them told to the same two people. */
class ManyAlarmsIT {

    private static final int SITES = Slices.SIZE + 100;
    private static final Instant NOW = Fixtures.at("2026-11-25T12:00");

    private final Setup setup = new Setup(
            IntStream.range(0, SITES)
                    .mapToObj(i -> new Site("site-" + i, "Site " + i, Fixtures.CHICAGO, "night"))
                    .toList(),
            List.of(Fixtures.aBox()),
            List.of(),
            List.of(Fixtures.ana(), Fixtures.ben()),
            List.of(Fixtures.crew()),
            List.of(Fixtures.night()));

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void reads_each_as_if_it_were_read_alone(TestDatabase database) {
        DataSource source = database.newDataSource();
        raise(source);
        var counting = new CountingDataSource(source);
        var alarms = new Alarms(new JdbcTemplate(counting.proxy()));

        List<RecordedAlarm> current = alarms.current();

        assertThat(current).hasSize(SITES);
        assertThat(counting.queries())
                .as("the alarms, then callouts and notices in two slices each; nothing was attempted")
                .isBetween(6L, 7L);
        for (int i = 0; i < SITES; i += 50) {
            RecordedAlarm one = current.get(i);
            assertThat(alarms.byId(one.alarm().id())).contains(one);
        }
        assertThat(notices(current))
                .as("a text that tells of alarms in both slices is one text")
                .anyMatch(notice -> notice.notice().callouts().size() > Slices.SIZE);
    }

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void finds_and_counts_those_of_a_site_without_their_stories(TestDatabase database) {
        DataSource source = database.newDataSource();
        raise(source);
        var alarms = new Alarms(new JdbcTemplate(source));

        assertThat(alarms.currentAt("site-7"))
                .extracting(Alarm::key)
                .containsExactly(new AlarmKey("site-7", "tank", "high"));
        assertThat(alarms.currentAt("nowhere")).isEmpty();
        Map<String, Long> counted = new HashMap<>();
        alarms.current().stream()
                .filter(one -> !one.alarm().state().withheld())
                .forEach(one -> counted.merge(one.alarm().key().site(), 1L, Long::sum));
        assertThat(alarms.countedBySite()).isEqualTo(counted).hasSize(SITES - 1).doesNotContainKey("site-3");
    }

    private static List<RecordedNotice> notices(List<RecordedAlarm> alarms) {
        return alarms.stream()
                .flatMap(one -> one.callout().stream())
                .flatMap(callout -> callout.notices().stream())
                .distinct()
                .toList();
    }

    /** One at each site; that of site 3 is shelved; then the tray of whoever was called is emptied. */
    private void raise(DataSource source) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(setup);
            var escalator = new Escalator(Links.NONE, sheet::nextCode);
            for (int i = 0; i < SITES; i++) {
                var key = new AlarmKey("site-" + i, "tank", "high");
                decide(sheet, escalator, new Stimulus.Reported("mesa-9-box", List.of(Fixtures.active(key, NOW))), NOW);
            }
            var shelved = new AlarmKey("site-3", "tank", "high");
            decide(sheet, escalator, new Stimulus.Shelve(shelved, Duration.ofHours(1), "work on it", "ben"), NOW);
            Instant later = NOW.plusSeconds(600);
            decide(sheet, escalator, new Stimulus.DeskDue("ana"), later);
            writing.commit(sheet, later);
        }
    }

    private static void decide(Sheet sheet, Escalator escalator, Stimulus stimulus, Instant now) {
        Decision decision = escalator.decide(sheet, stimulus, now);
        sheet.apply(decision.changes());
    }
}
