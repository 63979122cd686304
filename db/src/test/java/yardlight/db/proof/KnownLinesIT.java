package yardlight.db.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Changes;
import yardlight.escalation.Fixtures;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;

class KnownLinesIT {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00.123456Z");

    private final Contact ana = Fixtures.ana();

    @ParameterizedTest
    @EnumSource
    void gives_what_is_known_of_each_line_in_the_order_of_the_contact(TestDatabase database) {
        DataSource source = database.newDataSource();
        LineHealth mail = LineHealth.unknown(key(1))
                .handedOver(AT)
                .delivered(AT)
                .answered(AT)
                .troubled(AT, "451 later")
                .tested(new LineHealth.Test("ana.test.2-x", 2, AT, true));
        var gone = LineHealth.unknown(new LineHealth.Key("ana", "push", "p".repeat(1_200)));
        store(source, List.of(mail, gone), List.of());

        var lines = new KnownLines(new JdbcTemplate(source));

        assertThat(lines.of(ana)).containsExactly(LineHealth.unknown(key(0)), mail);
        assertThat(lines.all()).containsOnlyKeys(key(1), gone.key());
        store(source, List.of(mail.answered(AT.plusSeconds(9))), List.of());
        assertThat(lines.of(ana).get(1).answeredAt()).contains(AT.plusSeconds(9));
    }

    @ParameterizedTest
    @EnumSource
    void tells_by_which_line_a_notice_came_when_it_can_have_been_one_only(TestDatabase database) {
        DataSource source = database.newDataSource();
        var lines = new KnownLines(new JdbcTemplate(source));
        store(source, List.of(), List.of(attempt(0, "sms-mail", "refused"), attempt(1, "mail", "accepted")));
        assertThat(lines.way("n", ana)).contains(1);

        store(source, List.of(), List.of(attempt(1, "smpp", "unknown")));
        assertThat(lines.way("n", ana)).isEmpty();
        assertThat(lines.way("other", ana)).isEmpty();
    }

    private LineHealth.Key key(int place) {
        return new LineHealth.Key(
                "ana", ana.lines().get(place).channel(), ana.lines().get(place).address());
    }

    private static AttemptRecord attempt(int line, String channel, String outcome) {
        return new AttemptRecord("n", AT, channel, line, outcome, "", Optional.empty());
    }

    private static void store(DataSource source, List<LineHealth> lines, List<AttemptRecord> attempts) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            var notice = Notice.other(Purpose.TEST, "n", "ana", AT, 1);
            lines.forEach(line -> sheet.health(line.key()));
            sheet.notice("n");
            sheet.apply(new Changes(List.of(), List.of(), List.of(notice), List.of(), List.of(), Map.of(), lines));
            attempts.forEach(writing::attempt);
            writing.commit(sheet, AT);
        }
    }
}
