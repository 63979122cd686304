package yardlight.gateway.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterProperties;
import org.springframework.core.Ordered;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers when the doors cannot ask the database who knocks: in the same form as the rooms behind them. A box whose key cannot be
 * looked up, or a person whose password cannot, is told to come again and not that it was wrong.
 */
@Component
final class DoorTrouble extends OncePerRequestFilter implements Ordered {

    private final ProblemWriter writer;

    DoorTrouble(ProblemWriter writer) {
        this.writer = writer;
    }

    @Override
    public int getOrder() {
        return SecurityFilterProperties.DEFAULT_FILTER_ORDER - 1;
    }

    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (DataAccessException | TransactionException thrown) {
            if (response.isCommitted()) {
                throw thrown;
            }
            writer.write(Translation.of(thrown, request), request, response);
        }
    }
}
