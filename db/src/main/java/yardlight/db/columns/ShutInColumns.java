package yardlight.db.columns;

import static yardlight.db.columns.Column.maybe;
import static yardlight.db.columns.Column.maybeTime;
import static yardlight.db.columns.Column.text;

import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Consent;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.shutin.Wish;

/** How sites stand with being asked to shut in. */
public final class ShutInColumns {

    public static final Table<Standing> TABLE = Table.of(
            "shut_in",
            List.of(
                    text("site", Standing::site),
                    maybe("terms", one -> one.consent().map(Consent::terms)),
                    maybe("turned_on_by", one -> one.consent().map(Consent::by)),
                    maybeTime("turned_on_at", one -> one.consent().map(Consent::at)),
                    maybe("request", of(Request::id)),
                    maybe("state", of(request -> request.state().word())),
                    maybe("way", of(request -> request.way().word())),
                    maybe("through", of(Request::through)),
                    maybe("asker", of(request -> request.asker().kind().word())),
                    maybe("asked_by", of(request -> request.asker().by())),
                    maybeTime("asked_at", of(Request::askedAt)),
                    maybeTime("expires_at", of(Request::expiresAt)),
                    maybeTime("confirm_by", of(Request::confirmBy)),
                    maybeTime("taken_at", one -> one.request().flatMap(Request::takenAt)),
                    maybeTime("tried_at", one -> one.request().flatMap(Request::triedAt)),
                    maybeTime("ended_at", one -> one.request().flatMap(Request::endedAt)),
                    maybe("wish_contact", one -> one.wish().map(Wish::contact)),
                    maybe("wish_address", one -> one.wish().map(Wish::address)),
                    new Column<>(
                            "wish_code",
                            Types.INTEGER,
                            one -> one.wish().map(Wish::code).orElse(null)),
                    maybeTime("wish_until", one -> one.wish().map(Wish::until))));

    private ShutInColumns() {}

    private static <T> Function<Standing, Optional<T>> of(Function<Request, T> part) {
        return standing -> standing.request().map(part);
    }

    public static Standing read(Row row) throws SQLException {
        return new Standing(row.text("site"), consent(row), request(row), wish(row));
    }

    private static Optional<Consent> consent(Row row) throws SQLException {
        Optional<String> terms = row.maybe("terms");
        return terms.isEmpty()
                ? Optional.empty()
                : Optional.of(new Consent(terms.get(), row.text("turned_on_by"), row.time("turned_on_at")));
    }

    private static Optional<Request> request(Row row) throws SQLException {
        Optional<String> id = row.maybe("request");
        return id.isEmpty()
                ? Optional.empty()
                : Optional.of(new Request(
                        id.get(),
                        RequestState.of(row.text("state")),
                        Terms.Way.of(row.text("way")),
                        row.text("through"),
                        new Asker(Asker.Kind.of(row.text("asker")), row.text("asked_by")),
                        row.time("asked_at"),
                        row.time("expires_at"),
                        row.time("confirm_by"),
                        row.maybeTime("taken_at"),
                        row.maybeTime("tried_at"),
                        row.maybeTime("ended_at")));
    }

    private static Optional<Wish> wish(Row row) throws SQLException {
        Optional<Instant> until = row.maybeTime("wish_until");
        return until.isEmpty()
                ? Optional.empty()
                : Optional.of(new Wish(
                        row.text("wish_contact"), row.text("wish_address"), row.number("wish_code"), until.get()));
    }
}
