package yardlight.db.columns;

import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.number;
import static yardlight.db.columns.Column.text;
import static yardlight.db.columns.Column.time;

import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.OfferState;

/** Turns that somebody asked others to take. */
public final class SwapColumns {

    public static final Table<Offer> TABLE = Table.of(
            "swap",
            List.of(
                    text("id", Offer::id),
                    number("code", Offer::code),
                    text("roster", Offer::roster),
                    text("asked_by", Offer::by),
                    text("starts", offer -> offer.from().toString()),
                    text("ends", offer -> offer.to().toString()),
                    text("asked", offer -> Compact.join(offer.asked(), Function.identity())),
                    text("declined", offer -> Compact.join(offer.declined(), Function.identity())),
                    text("state", offer -> offer.state().word()),
                    maybe("taker", Offer::taker),
                    time("asked_at", Offer::askedAt),
                    time("expires_at", Offer::expiresAt),
                    maybe(
                            "open_in",
                            offer -> Optional.of(offer.roster())
                                    .filter(any -> offer.state().takeable()))));

    private SwapColumns() {}

    public static Offer read(Row row) throws SQLException {
        return new Offer(
                row.text("id"),
                row.number("code"),
                row.text("roster"),
                row.text("asked_by"),
                LocalDateTime.parse(row.text("starts")),
                LocalDateTime.parse(row.text("ends")),
                Compact.split(row.text("asked"), Function.identity()),
                Set.copyOf(Compact.split(row.text("declined"), Function.identity())),
                OfferState.of(row.text("state")),
                row.maybe("taker"),
                row.time("asked_at"),
                row.time("expires_at"));
    }
}
