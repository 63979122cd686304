package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.transaction.TransactionException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.lane.LaneBusy;
import yardlight.gateway.lane.UnknownBox;

/** What an exception means to the caller. The words are ours: a library's message may show what is none of theirs. */
final class Translation {

    private static final Logger LOG = LoggerFactory.getLogger(Translation.class);
    private static final Duration SHORT_WHILE = Duration.ofSeconds(2);

    private Translation() {}

    static Problem of(Exception thrown, HttpServletRequest request) {
        if (thrown instanceof Problem problem) {
            return problem;
        }
        if (thrown instanceof ErrorResponse known) {
            return known(known, request);
        }
        if (thrown instanceof HttpMessageNotReadableException) {
            return Problem.unreadable("the body cannot be read");
        }
        if (hasBadQuery(thrown)) {
            return badQuery();
        }
        if (thrown instanceof MethodArgumentTypeMismatchException) {
            // Pages and what they fetch write their own addresses: here somebody typed.
            return byStatus(HttpStatus.BAD_REQUEST, request);
        }
        if (thrown instanceof LaneBusy) {
            return busy();
        }
        if (thrown instanceof UnknownBox) {
            return byStatus(HttpStatus.UNAUTHORIZED, request).with(HttpHeaders.WWW_AUTHENTICATE, Bearer.CHALLENGE);
        }
        if (databaseAway(thrown)) {
            LOG.warn(
                    "{} {}: the database does not answer: {}",
                    request.getMethod(),
                    Reader.path(request),
                    thrown.toString());
            return busy();
        }
        LOG.error("{} {} failed; this is a bug in Yardlight", request.getMethod(), Reader.path(request), thrown);
        return byStatus(HttpStatus.INTERNAL_SERVER_ERROR, request);
    }

    static Problem badQuery() {
        return Problem.unreadable("the query cannot be read; it must be UTF-8, percent-encoded");
    }

    /** The server finds out when somebody asks for a parameter, which may be a page in the making. */
    static boolean hasBadQuery(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof InvalidParameterException) {
                return true;
            }
        }
        return false;
    }

    private static boolean databaseAway(Exception thrown) {
        return thrown instanceof DataAccessResourceFailureException
                || thrown instanceof TransientDataAccessException
                || thrown instanceof TransactionException;
    }

    private static Problem busy() {
        return Problem.later(
                HttpStatus.SERVICE_UNAVAILABLE,
                Sentence.of("busy", "the gateway cannot store anything now; try again"),
                SHORT_WHILE);
    }

    private static Problem known(ErrorResponse known, HttpServletRequest request) {
        Problem problem = byStatus(HttpStatus.valueOf(known.getStatusCode().value()), request);
        for (String header : known.getHeaders().headerNames()) {
            problem = problem.with(header, String.join(", ", known.getHeaders().getOrEmpty(header)));
        }
        return problem;
    }

    /** The problem for a bare status, as containers and frameworks give it. */
    static Problem byStatus(HttpStatus status, HttpServletRequest request) {
        String detail = switch (status) {
            case BAD_REQUEST -> "the request cannot be read";
            case UNAUTHORIZED -> "this needs a login";
            case FORBIDDEN -> "this login may not do that";
            case NOT_FOUND -> "there is nothing at this address";
            case METHOD_NOT_ALLOWED -> request.getMethod() + " is not possible at this address";
            case NOT_ACCEPTABLE -> "there is no answer of the type that was asked for";
            case CONTENT_TOO_LARGE -> "the body is too large";
            case UNSUPPORTED_MEDIA_TYPE -> "a body of this content type is not read here";
            case INTERNAL_SERVER_ERROR -> "something went wrong in the gateway; its log says what";
            default -> status.getReasonPhrase();
        };
        return Problem.of(status, Sentence.of("detail." + status.value(), detail, request.getMethod()));
    }
}
