package yardlight.gateway.document;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/** The parameters of a query, read like {@link Fields}: an empty one counts as absent, every mistake is noted. */
public final class Query {

    private final HttpServletRequest request;
    private final List<Fault> faults = new ArrayList<>();

    public Query(HttpServletRequest request) {
        this.request = request;
    }

    public Optional<String> text(String name) {
        return Optional.ofNullable(request.getParameter(name)).filter(text -> !text.isBlank());
    }

    /** A text that means something; {@code rule} says what it must be. */
    public <T> Optional<T> as(String name, String rule, Function<String, Optional<T>> meaning) {
        Optional<String> text = text(name);
        Optional<T> value = text.flatMap(meaning);
        if (text.isPresent() && value.isEmpty()) {
            faults.add(Fault.inQuery(name, rule));
        }
        return value;
    }

    public Optional<Instant> instant(String name) {
        return as(name, "must be an RFC 3339 time such as 2026-11-25T02:13:00Z", Rfc3339::instant);
    }

    /** @throws Problem 422 when anything is wrong */
    public void orNothing() {
        if (!faults.isEmpty()) {
            throw Problem.invalid(faults);
        }
    }
}
