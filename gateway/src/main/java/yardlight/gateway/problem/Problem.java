package yardlight.gateway.problem;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import yardlight.escalation.sentence.Sentence;

/** Thrown when a request cannot be done; its message is for the caller to read. Carries no stack: it is not a bug. */
public final class Problem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient HttpStatus status;
    private final transient Sentence sentence;
    private final transient List<Fault> faults;
    private final transient Map<String, String> headers;

    private Problem(HttpStatus status, Sentence detail, List<Fault> faults, Map<String, String> headers) {
        super(detail.english(), null, false, false);
        this.sentence = detail;
        this.status = status;
        this.faults = List.copyOf(faults);
        this.headers = Map.copyOf(headers);
    }

    public static Problem of(HttpStatus status, String detail) {
        return of(status, Sentence.plain(detail));
    }

    /** With a detail that other languages have words for. */
    public static Problem of(HttpStatus status, Sentence detail) {
        return new Problem(status, detail, List.of(), Map.of());
    }

    /** 400: the bytes make no sense as what they claim to be. */
    public static Problem unreadable(String detail) {
        return of(HttpStatus.BAD_REQUEST, detail);
    }

    public static Problem notFound(String detail) {
        return of(HttpStatus.NOT_FOUND, detail);
    }

    /** 409: what is asked for does not fit the state that things are in. */
    public static Problem conflict(String reason) {
        return of(HttpStatus.CONFLICT, reason);
    }

    public static Problem tooLarge(String detail) {
        return of(HttpStatus.CONTENT_TOO_LARGE, detail);
    }

    /** 415, with the types that would do. */
    public static Problem wrongType(String accepted) {
        return new Problem(
                HttpStatus.UNSUPPORTED_MEDIA_TYPE,
                Sentence.of("content-type", "the content type must be " + accepted, accepted),
                List.of(),
                Map.of(HttpHeaders.ACCEPT, accepted.replace(" or ", ", ")));
    }

    /** 422: readable, but wrong; every fault that was found. */
    public static Problem invalid(List<Fault> faults) {
        String detail = faults.size() == 1
                ? "one thing is wrong; nothing was stored"
                : faults.size() + " things are wrong; nothing was stored";
        Sentence said = Sentence.of("wrong." + (faults.size() == 1 ? "one" : "many"), detail, faults.size());
        return new Problem(HttpStatus.UNPROCESSABLE_CONTENT, said, faults, Map.of());
    }

    public static Problem invalid(Fault fault) {
        return invalid(List.of(fault));
    }

    /** 429 or 503: the same request may be repeated after the wait. */
    public static Problem later(HttpStatus status, String detail, Duration wait) {
        return later(status, Sentence.plain(detail), wait);
    }

    /** The same with a detail that other languages have words for. */
    public static Problem later(HttpStatus status, Sentence detail, Duration wait) {
        return new Problem(status, detail, List.of(), Map.of(HttpHeaders.RETRY_AFTER, Long.toString(seconds(wait))));
    }

    /** Whole seconds, rounded up and at least 1: whoever comes back after them is never early (RFC 9110, 10.2.3). */
    static long seconds(Duration wait) {
        return Math.max(1, wait.plusNanos(999_999_999).toSeconds());
    }

    /** The same problem with one more header. */
    public Problem with(String header, String value) {
        var more = new LinkedHashMap<>(headers);
        more.put(header, value);
        return new Problem(status, sentence, faults, more);
    }

    /** The message, also for other languages. */
    public Sentence sentence() {
        return sentence;
    }

    public HttpStatus status() {
        return status;
    }

    public List<Fault> faults() {
        return faults;
    }

    public Map<String, String> headers() {
        return headers;
    }
}
