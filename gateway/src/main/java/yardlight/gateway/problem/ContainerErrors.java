package yardlight.gateway.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Where the container sends what went wrong outside the controllers. */
@Controller
class ContainerErrors implements ErrorController {

    private final ProblemWriter writer;

    ContainerErrors(ProblemWriter writer) {
        this.writer = writer;
    }

    @RequestMapping("${server.error.path:/error}")
    void error(HttpServletRequest request, HttpServletResponse response) throws IOException {
        writer.write(problem(request), request, response);
    }

    private static Problem problem(HttpServletRequest request) {
        if (request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Throwable thrown
                && Translation.hasBadQuery(thrown)) {
            return Translation.badQuery();
        }
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer number ? HttpStatus.resolve(number) : HttpStatus.NOT_FOUND;
        return Translation.byStatus(status == null ? HttpStatus.BAD_REQUEST : status, request);
    }
}
