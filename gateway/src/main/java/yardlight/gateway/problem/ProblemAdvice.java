package yardlight.gateway.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;

/** Turns everything that a controller throws into an answer. */
@ControllerAdvice
class ProblemAdvice {

    private final ProblemWriter writer;

    ProblemAdvice(ProblemWriter writer) {
        this.writer = writer;
    }

    /** What breaks off in the middle goes on to the container, which then cuts the connection: the caller must notice. */
    @ExceptionHandler
    void any(Exception thrown, HttpServletRequest request, HttpServletResponse response) throws Exception {
        if (response.isCommitted()) {
            throw thrown;
        }
        writer.write(Translation.of(thrown, request), request, response);
    }

    /** The caller has hung up: there is nobody to answer. */
    @ExceptionHandler
    void gone(AsyncRequestNotUsableException thrown, HttpServletResponse response) {}

    /** For the security chain to answer. */
    @ExceptionHandler({AccessDeniedException.class, AuthenticationException.class})
    void forbidden(RuntimeException thrown, HttpServletResponse response) {
        throw thrown;
    }
}
