package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;

/**
 * Who has given their password once more in this session. It is asked for before what somebody signs in with is changed, so that
 * whoever finds a phone unlocked cannot stay.
 */
@Component
public class Confirmed {

    /** Long enough to unlock a security key, and to try again. */
    static final Duration LASTS = Duration.ofMinutes(5);

    private static final String SINCE = Confirmed.class.getName();

    private final OwnPassword own;
    private final InstantSource clock;

    Confirmed(OwnPassword own, InstantSource clock) {
        this.own = own;
        this.clock = clock;
    }

    /**
     * @return whether the password is the one that they have; then it is not asked for again for five minutes
     * @throws org.springframework.security.authentication.LockedException after too many wrong ones
     */
    public boolean confirm(String login, String password, HttpServletRequest request) {
        boolean right = own.is(login, password, request);
        HttpSession session = request.getSession(false);
        if (right && session != null) {
            session.setAttribute(SINCE, clock.instant());
        }
        return right;
    }

    /**
     * Whether they did within the last five minutes. Who comes without a session has given it with this very request; within
     * one a password that is sent along is not looked at, and counts for nothing.
     */
    public boolean holds(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session == null) {
            return request.getHeader(HttpHeaders.AUTHORIZATION) != null && request.getRemoteUser() != null;
        }
        Instant since = (Instant) session.getAttribute(SINCE);
        return since != null && clock.instant().isBefore(since.plus(LASTS));
    }
}
