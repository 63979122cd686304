package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Changes;
import yardlight.escalation.Fixtures;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Consent;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestTrigger;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.shutin.Wish;

/** How a site stands with shutting in comes back as it was, and is due when it should be, on every database. */
abstract class ShutInRoundTripContract {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00.123456Z");

    private DataSource source;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
    }

    @Test
    void a_site_that_may_be_asked_to_shut_in_and_one_that_may_not() {
        Terms terms = Terms.usual(Terms.Way.RELAY, "valve");
        Request asked = Request.made("mesa-9.shut-in.1", terms, new Asker(Asker.Kind.LAST_CALL, "water-tank/high"), AT);
        Request tried = asked.after(RequestTrigger.TRY, AT.plusSeconds(1)).orElseThrow();
        Request taken = tried.after(RequestTrigger.TAKE, AT.plusSeconds(2)).orElseThrow();
        Request over = taken.after(RequestTrigger.CONFIRM, AT.plusSeconds(3)).orElseThrow();
        var before = new Standing(
                "mesa-9",
                Optional.of(new Consent(terms.words(), "owner", AT)),
                Optional.of(tried),
                Optional.of(new Wish("ana", "+15755550101", 482_913, AT.plusSeconds(300))));
        var after = new Standing("mesa-9", before.consent(), Optional.of(over), Optional.empty());

        Sheet first = stored(before);
        Sheet second = stored(after);

        assertThat(first.standing("mesa-9")).isEqualTo(before);
        assertThat(second.standing("mesa-9")).isEqualTo(after);
        assertThat(second.standing("loma-4")).isEqualTo(Standing.none("loma-4"));
    }

    @Test
    void an_open_request_has_a_due_row_until_it_is_over() {
        Terms terms = Terms.usual(Terms.Way.BOX, "mesa-9-box");
        Request asked = Request.made("mesa-9.shut-in.1", terms, new Asker(Asker.Kind.PAGE, "ana"), AT);
        Request over = asked.after(RequestTrigger.CONFIRM, AT.plusSeconds(3)).orElseThrow();
        Standing open = Standing.none("mesa-9").with(asked);

        stored(open);
        List<String> due = dues();
        stored(open.with(over));

        assertThat(due).containsExactly("shut-in mesa-9");
        assertThat(dues()).isEmpty();
    }

    private List<String> dues() {
        return new JdbcTemplate(source).queryForList("select kind || ' ' || subject from due", String.class);
    }

    private Sheet stored(Standing standing) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            sheet.standing(standing.site());
            sheet.apply(Changes.standings(List.of(standing)));
            writing.commit(sheet, AT);
        }
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            sheet.standing(standing.site());
            sheet.standing("loma-4");
            return sheet;
        }
    }
}
