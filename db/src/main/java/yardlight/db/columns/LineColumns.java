package yardlight.db.columns;

import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.text;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.proof.LineHealth.Key;
import yardlight.escalation.proof.LineHealth.Test;
import yardlight.escalation.proof.LineHealth.Trouble;

/** What is known of people's lines. */
public final class LineColumns {

    public static final Table<LineHealth> TABLE = Table.of(
            "line_health",
            List.of(
                    text("id", line -> id(line.key())),
                    text("contact", line -> line.key().contact()),
                    text("channel", line -> line.key().channel()),
                    text("address", line -> line.key().address()),
                    maybeTime("handed_over_at", LineHealth::handedOverAt),
                    maybeTime("delivered_at", LineHealth::deliveredAt),
                    maybeTime("answered_at", LineHealth::answeredAt),
                    maybeTime("trouble_at", line -> line.trouble().map(Trouble::at)),
                    maybe("trouble", line -> line.trouble().map(Trouble::words)),
                    maybe("test_notice", line -> line.test().map(Test::notice)),
                    new Column<>(
                            "test_code",
                            Types.INTEGER,
                            line -> line.test().map(Test::code).orElse(null)),
                    maybeTime("test_at", line -> line.test().map(Test::at)),
                    new Column<>(
                            "test_answered",
                            Types.BOOLEAN,
                            line -> line.test().map(Test::answered).orElse(null))));

    private LineColumns() {}

    /** An address can be longer than an index takes. */
    private static String id(Key key) {
        String name = key.contact() + " " + key.channel() + " " + key.address();
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    public static LineHealth read(Row row) throws SQLException {
        return new LineHealth(
                new Key(row.text("contact"), row.text("channel"), row.text("address")),
                row.maybeTime("handed_over_at"),
                row.maybeTime("delivered_at"),
                row.maybeTime("answered_at"),
                trouble(row),
                test(row));
    }

    private static Optional<Trouble> trouble(Row row) throws SQLException {
        Optional<Instant> at = row.maybeTime("trouble_at");
        return at.isEmpty() ? Optional.empty() : Optional.of(new Trouble(at.get(), row.text("trouble")));
    }

    private static Optional<Test> test(Row row) throws SQLException {
        Optional<String> notice = row.maybe("test_notice");
        return notice.isEmpty()
                ? Optional.empty()
                : Optional.of(new Test(
                        notice.get(), row.number("test_code"), row.time("test_at"), row.flag("test_answered")));
    }
}
