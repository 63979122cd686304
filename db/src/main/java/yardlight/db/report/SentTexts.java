package yardlight.db.report;

import java.time.Instant;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.columns.RowByRow;

/** Reads what people were sent. */
@Repository
public class SentTexts {

    private static final String SENT = "select contact, purpose, channel, handed_over_at from notice"
            + " where queued_at >= ? and queued_at < ? and handed_over_at is not null"
            + " order by contact, handed_over_at, id";

    /**
     * One that a carrier took.
     *
     * @param purpose in the words of {@code Purpose}
     */
    public record SentText(String contact, String purpose, String channel, Instant at) {}

    private final JdbcTemplate jdbc;

    SentTexts(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Hands over those that were made from {@code from}, inclusive, to {@code to}, exclusive: one person after the other, and
     * for each in the order in which carriers took them.
     */
    public void each(Instant from, Instant to, Consumer<SentText> reader) {
        RowByRow.each(
                jdbc,
                SENT,
                rows -> {
                    var row = new Row(rows);
                    reader.accept(new SentText(
                            row.text("contact"),
                            row.maybe("purpose").orElse("call"),
                            row.maybe("channel").orElse(""),
                            row.time("handed_over_at")));
                },
                Column.stored(from),
                Column.stored(to));
    }
}
