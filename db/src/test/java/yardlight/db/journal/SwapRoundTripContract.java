package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Changes;
import yardlight.escalation.Fixtures;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.OfferTrigger;
import yardlight.escalation.swap.Part;

/** A turn that others were asked to take comes back as it was, and is due when it should be, on every database. */
abstract class SwapRoundTripContract {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00.123456Z");

    private final Offer offer = Offer.made(
            "crew.swap.t5x8a1-10",
            10,
            "crew",
            "ana",
            new Part(LocalDateTime.parse("2026-11-27T19:00"), LocalDateTime.parse("2026-11-28T07:00:30")),
            List.of("ben", "carl"),
            AT,
            AT.plusSeconds(3600));

    private DataSource source;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
    }

    @Test
    void with_whoever_said_no_and_whoever_took_it() {
        Offer declined = offer.after(OfferTrigger.DECLINE, "ben", AT).orElseThrow();
        Offer taken = declined.after(OfferTrigger.TAKE, "carl", AT).orElseThrow();

        stored(declined);
        assertThat(read().offer(offer.id())).contains(declined);
        assertThat(read().offers("crew")).containsExactly(declined);
        stored(taken);
        assertThat(read().offer(offer.id())).contains(taken);
        assertThat(read().offers("crew")).isEmpty();
    }

    @Test
    void it_has_a_due_row_until_it_is_over() {
        stored(offer);
        List<String> due = dues();
        stored(offer.after(OfferTrigger.WITHDRAW, "ana", AT).orElseThrow());

        assertThat(due).containsExactly("swap " + offer.id());
        assertThat(dues()).isEmpty();
    }

    /** Codes go round from 10: the first one is taken by the offer, before a call can have it. */
    @Test
    void no_call_has_its_code_while_somebody_can_take_it() {
        stored(offer);
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            assertThat(writing.sheet(Fixtures.theSetup()).nextCode()).isEqualTo(11);
        }
        stored(offer.after(OfferTrigger.TAKE, "ben", AT).orElseThrow());
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            assertThat(writing.sheet(Fixtures.theSetup()).nextCode()).isEqualTo(10);
        }
    }

    private List<String> dues() {
        return new JdbcTemplate(source).queryForList("select kind || ' ' || subject from due", String.class);
    }

    private void stored(Offer one) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            sheet.offer(one.id());
            sheet.apply(Changes.offers(List.of(one)));
            writing.commit(sheet, AT);
        }
    }

    private Sheet read() {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            sheet.offers("crew");
            sheet.offer(offer.id());
            return sheet;
        }
    }
}
