package yardlight.gateway.problem;

import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.springframework.stereotype.Component;

/** How the security chains say no: in the same form as everything else. */
@Component
public class Refusals {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final ProblemWriter writer;

    public Refusals(ProblemWriter writer) {
        this.writer = writer;
    }

    /**
     * 401 with this challenge; 429 after too many wrong passwords, or while too many wait.
     *
     * @param detail what is missing
     */
    public AuthenticationEntryPoint challenge(String challenge, String detail) {
        return (request, response, thrown) -> {
            Problem problem = thrown instanceof LockedException
                    ? Problem.later(HttpStatus.TOO_MANY_REQUESTS, thrown.getMessage() + "; wait a little", PATIENCE)
                    : Problem.of(HttpStatus.UNAUTHORIZED, detail).with(HttpHeaders.WWW_AUTHENTICATE, challenge);
            writer.write(problem, request, response);
        };
    }

    public AccessDeniedHandler forbidden() {
        return (request, response, thrown) -> {
            String detail = thrown instanceof CsrfException
                    ? "this form has become too old; load the page again"
                    : "this login may not do that";
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
