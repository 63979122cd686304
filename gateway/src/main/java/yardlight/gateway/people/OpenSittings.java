package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.person.Sitting;
import yardlight.db.person.Sittings;

/**
 * The sessions of people, each with a row in the database beside it: whoever removes the row ends the session, on whichever
 * gateway it is. They end after 30 minutes in which nothing is asked for, and 24 hours after the sign-in in any case: what
 * NIST SP 800-63B-4 (2.2.3) asks of AAL2, which is more than it asks of a password alone (30 days).
 */
@Component
public class OpenSittings {

    static final Duration IDLE = Duration.ofMinutes(30);
    static final Duration LONGEST = Duration.ofHours(24);

    /** How exactly it is noted when something was last asked for. */
    private static final Duration EXACT = Duration.ofMinutes(1);

    private static final String ID = OpenSittings.class.getName();
    private static final int BYTES = 16;

    private final Sittings sittings;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    OpenSittings(Sittings sittings, InstantSource clock) {
        this.sittings = sittings;
        this.clock = clock;
    }

    /** Somebody has signed in: their session lasts from now on; one that it was before is over. */
    void begin(String login, HttpServletRequest request) {
        var details = new DeviceDetails(request);
        var bytes = new byte[BYTES];
        random.nextBytes(bytes);
        String id = HexFormat.of().formatHex(bytes);
        HttpSession session = request.getSession();
        end(session);
        Instant now = clock.instant();
        sittings.begin(
                new Sitting(id, login, details.address(), details.agent(), now, now),
                now.minus(IDLE).minus(EXACT),
                now.minus(LONGEST));
        session.setAttribute(ID, id);
    }

    /** Whether the session goes on; if so, something was asked for in it just now. */
    boolean goesOn(HttpSession session) {
        Instant now = clock.instant();
        Optional<Sitting> sitting = id(session).flatMap(sittings::byId).filter(one -> isOpen(one, now));
        sitting.filter(one -> !one.heardAt().plus(EXACT).isAfter(now)).ifPresent(one -> sittings.hear(one.id(), now));
        return sitting.isPresent();
    }

    private static boolean isOpen(Sitting sitting, Instant now) {
        return now.isBefore(sitting.beganAt().plus(LONGEST))
                && now.isBefore(sitting.heardAt().plus(IDLE).plus(EXACT));
    }

    void end(HttpSession session) {
        id(session).ifPresent(sittings::end);
    }

    /** All that are open, oldest first. */
    public List<Sitting> all() {
        Instant now = clock.instant();
        return sittings.since(now.minus(IDLE).minus(EXACT), now.minus(LONGEST));
    }

    /** The id of the one that a request belongs to; empty when it belongs to none. */
    public static String of(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        return session == null ? "" : id(session).orElse("");
    }

    /** Ends those of a login at once, all of them. */
    public int endAll(String login) {
        return sittings.endOthers(login, "");
    }

    /** Ends those of a login at once, but not the one that this request belongs to. */
    public int endOthers(String login, HttpServletRequest request) {
        return sittings.endOthers(login, of(request));
    }

    private static Optional<String> id(HttpSession session) {
        return Optional.ofNullable((String) session.getAttribute(ID));
    }
}
