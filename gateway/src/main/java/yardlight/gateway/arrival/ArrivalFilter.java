package yardlight.gateway.arrival;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;

/**
 * Lets a request pass when its body is there. Most bodies come in one piece with the head; whoever sends slower waits
 * without a thread. Otherwise as many slow senders as there are threads would keep everybody else out, and they need
 * not even have a key.
 */
final class ArrivalFilter implements Filter {

    private static final String ARRIVED = Arrival.class.getName();

    private final Arrivals arrivals;

    ArrivalFilter(Arrivals arrivals) {
        this.arrivals = arrivals;
    }

    @Override
    public void doFilter(ServletRequest any, ServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        HttpServletRequest request = (HttpServletRequest) any;
        if (request.getDispatcherType() == DispatcherType.REQUEST && hasBody(request)) {
            begin(request, (HttpServletResponse) response, chain);
        } else if (request.getAttribute(ARRIVED) instanceof Arrival arrival) {
            request.removeAttribute(ARRIVED);
            end(arrival, request, (HttpServletResponse) response, chain);
        } else {
            chain.doFilter(request, response);
        }
    }

    private void begin(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        Arrival arrival = arrivals.of(request, response);
        if (arrival.here()) {
            pass(arrival, request, response, chain);
        } else {
            request.setAttribute(ARRIVED, arrival);
            arrival.await();
        }
    }

    private void end(Arrival arrival, HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        if (arrival.givenUp()) {
            arrival.close();
            arrivals.givenUp(request, response);
        } else {
            pass(arrival, request, response, chain);
        }
    }

    private static void pass(Arrival arrival, HttpServletRequest request, ServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        try {
            chain.doFilter(new Arrived(request, arrival.bytes()), response);
        } finally {
            arrival.close();
        }
    }

    private static boolean hasBody(HttpServletRequest request) {
        return request.getContentLengthLong() > 0 || request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null;
    }
}
