package yardlight.gateway.problem;

import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.InternalAuthenticationServiceException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.springframework.stereotype.Component;
import yardlight.escalation.sentence.Sentence;

/** How the security chains say no: in the same form as everything else. */
@Component
public class Refusals {

    private static final Logger LOG = LoggerFactory.getLogger(Refusals.class);
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final ProblemWriter writer;

    public Refusals(ProblemWriter writer) {
        this.writer = writer;
    }

    /**
     * 401 with this challenge; 429 after too many wrong passwords, or while too many wait. What kept the password from being looked
     * at is thrown again: it may have been right.
     *
     * @param detail what is missing
     */
    public AuthenticationEntryPoint challenge(String challenge, String detail) {
        return (request, response, thrown) -> {
            if (thrown instanceof InternalAuthenticationServiceException
                    && thrown.getCause() instanceof RuntimeException trouble) {
                throw trouble;
            }
            Problem problem = thrown instanceof LockedException
                    ? Problem.later(HttpStatus.TOO_MANY_REQUESTS, thrown.getMessage() + "; wait a little", PATIENCE)
                    : Problem.of(HttpStatus.UNAUTHORIZED, detail).with(HttpHeaders.WWW_AUTHENTICATE, challenge);
            writer.write(problem, request, response);
        };
    }

    public AccessDeniedHandler forbidden() {
        return (request, response, thrown) -> {
            Sentence detail = thrown instanceof CsrfException
                    ? Sentence.of("form.old", "this form has become too old; load the page again")
                    : Sentence.of("detail.403", "this login may not do that");
            LOG.warn(
                    "{} {} refused to {} from {}: {}",
                    request.getMethod(),
                    Reader.path(request),
                    request.getRemoteUser(),
                    request.getRemoteAddr(),
                    detail.english());
            writer.write(Problem.of(HttpStatus.FORBIDDEN, detail), request, response);
        };
    }

    /** Paths that no honest client sends, such as {@code //} and {@code ;}. */
    @Bean
    static RequestRejectedHandler rejected(ProblemWriter writer) {
        return (request, response, thrown) ->
                writer.write(Problem.unreadable("the address cannot be read"), request, response);
    }
}
