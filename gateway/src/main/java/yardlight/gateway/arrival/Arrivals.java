package yardlight.gateway.arrival;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.problem.ProblemWriter;

/**
 * What all arrivals have in common.
 *
 * @param room for the bytes of all of them
 * @param places for those that are waited for
 * @param most bytes that any body may have
 * @param within how long a body may take; how long it may stand still is the container's affair
 */
record Arrivals(Room room, Places places, long most, Duration within, ProblemWriter writer) {

    private static final Duration SHORT_WHILE = Duration.ofSeconds(2);

    Arrival of(HttpServletRequest request, HttpServletResponse response) throws IOException {
        return new Arrival(this, request, response);
    }

    /** Says what became of one that is not kept. */
    void refuse(Parcel.Fate fate, HttpServletRequest request, HttpServletResponse response) throws IOException {
        if (fate == Parcel.Fate.TOO_LARGE) {
            writer.write(Problem.tooLarge("the body must be at most " + most / 1024 + " KB"), request, response);
        } else {
            tooMuch(request, response);
        }
    }

    /** The sender of a body that nobody waits for any more may go on sending it: nothing else is read from there. */
    void givenUp(HttpServletRequest request, HttpServletResponse response) throws IOException {
        response.setHeader(HttpHeaders.CONNECTION, "close");
        tooMuch(request, response);
    }

    private void tooMuch(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Problem problem = Problem.later(
                HttpStatus.SERVICE_UNAVAILABLE,
                "too much is coming in at once; nothing was stored, try again",
                SHORT_WHILE);
        writer.write(problem, request, response);
    }

    /** The connection is of no use afterwards: nobody knows what of the body is still on its way (RFC 9110, 15.5.9). */
    void tooSlow(HttpServletRequest request, HttpServletResponse response) throws IOException {
        response.setHeader(HttpHeaders.CONNECTION, "close");
        writer.write(
                Problem.of(HttpStatus.REQUEST_TIMEOUT, "the body took too long; nothing was stored"),
                request,
                response);
    }
}
