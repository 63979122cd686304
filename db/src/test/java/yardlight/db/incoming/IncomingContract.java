package yardlight.db.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.DbApplication;
import yardlight.db.TestDatabase;

/** Texts and receipts that came in, on every database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class IncomingContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private ConfigurableApplicationContext context;
    private IncomingTexts texts;
    private Receipts receipts;
    private JdbcTemplate jdbc;

    abstract TestDatabase database();

    @BeforeAll
    void start() {
        context = DbApplication.on(database());
        texts = context.getBean(IncomingTexts.class);
        receipts = context.getBean(Receipts.class);
        jdbc = context.getBean(JdbcTemplate.class);
    }

    @AfterAll
    void stop() {
        context.close();
    }

    @Test
    void a_text_is_known_from_when_it_is_kept() {
        assertThat(texts.known("smpp/known")).isFalse();

        texts.keep(text("smpp/known", "", NOW));

        assertThat(texts.known("smpp/known")).isTrue();
    }

    /** PostgreSQL refuses U+0000, and the carrier would bring the text again for ever. */
    @Test
    void a_text_with_a_character_that_is_none_is_kept_without_it() {
        texts.keep(new IncomingText("smpp/nought", "smpp", "+15755550101", "\u0000ok\u0000 47", NOW, "You have it."));

        assertThat(texts.open(NOW, NOW, 10))
                .filteredOn(text -> text.id().equals("smpp/nought"))
                .extracting(IncomingText::words)
                .containsExactly("ok 47");
    }

    @Test
    void an_answer_is_open_until_it_is_claimed_and_again_when_the_claim_is_over() {
        IncomingText text = text("smpp/claimed", "You have it.", NOW);
        texts.keep(text);
        assertThat(texts.open(NOW, NOW, 10)).contains(text);

        assertThat(texts.claim(text.id(), NOW, NOW.plusSeconds(60))).isTrue();
        assertThat(texts.claim(text.id(), NOW.plusSeconds(1), NOW.plusSeconds(61)))
                .isFalse();
        assertThat(texts.open(NOW, NOW.plusSeconds(1), 10)).doesNotContain(text);
        assertThat(texts.open(NOW, NOW.plusSeconds(61), 10)).contains(text);

        texts.answered(text.id(), NOW.plusSeconds(62));
        assertThat(texts.open(NOW, NOW.plusSeconds(200), 10)).doesNotContain(text);
        assertThat(texts.claim(text.id(), NOW.plusSeconds(200), NOW.plusSeconds(260)))
                .isFalse();
    }

    @Test
    void an_answer_that_is_too_old_or_that_says_nothing_is_not_open() {
        texts.keep(text("smpp/old", "You have it.", NOW.minusSeconds(1)));
        texts.keep(text("smpp/mute", "", NOW));

        assertThat(texts.open(NOW, NOW, 10)).extracting(IncomingText::id).doesNotContain("smpp/old", "smpp/mute");
    }

    @Test
    void a_receipt_is_found_to_be_about_a_notice_once_it_is_on_record_that_it_was_taken() {
        var receipt = new KeptReceipt("smpp", "7f3a", "refused", "UNDELIV", NOW);
        receipts.keep(receipt, NOW);
        receipts.keep(receipt, NOW.plusSeconds(5));
        assertThat(receipts.open(NOW, 10)).isEmpty();

        taken("c.1", "smpp", "7f3a");
        taken("c.2", "http-voice", "7f3a");

        assertThat(receipts.open(NOW, 10))
                .containsExactly(new Meant(receipt.id(), "c.1", 1, "smpp", "refused", "UNDELIV"));
        assertThat(receipts.open(NOW.plusSeconds(1), 10)).isEmpty();
        receipts.heeded(receipt.id(), NOW);
        assertThat(receipts.open(NOW, 10)).isEmpty();
    }

    private static IncomingText text(String id, String answer, Instant at) {
        return new IncomingText(id, "smpp", "+15755550101", "ok 47", at, answer);
    }

    private void taken(String notice, String channel, String reference) {
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                        + " values (?, 'ana', 'c', 'high', 'MESA 9', 'handed-over', current_timestamp, 1)",
                notice);
        jdbc.update(
                "insert into attempt (number, notice, attempted_at, channel, outcome, detail, line, reference)"
                        + " values ((select coalesce(max(number), 0) + 1 from attempt), ?, current_timestamp, ?,"
                        + " 'accepted', '250', 1, ?)",
                notice,
                channel,
                reference);
    }
}
