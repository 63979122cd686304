package yardlight.gateway.coverage;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.coverage.Coverage;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.coverage.TooMuch;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/**
 * Works out coverage, one at a time and never on the lane: with the lines that are stopped and the lines that are proven
 * now. What {@link Recount} found last is at hand for everybody; it is one small value, however much is set up.
 */
@Component
public class Coverages {

    private static final Logger LOG = LoggerFactory.getLogger(Coverages.class);

    private static final String BUSY = "coverage is being worked out for others";

    /** Common practice, no source: a person still looks at the page, and few threads wait together. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final SetupInForce inForce;
    private final Alarms alarms;
    private final KnownLines lines;
    private final InstantSource clock;
    private final Duration patience;
    private final Semaphore one = new Semaphore(1, true);
    private volatile Optional<Outlook> last = Optional.empty();

    @Autowired
    Coverages(SetupInForce inForce, Alarms alarms, KnownLines lines, InstantSource clock) {
        this(inForce, alarms, lines, clock, PATIENCE);
    }

    /** @param patience for how long anybody waits for their turn */
    Coverages(SetupInForce inForce, Alarms alarms, KnownLines lines, InstantSource clock, Duration patience) {
        this.inForce = inForce;
        this.alarms = alarms;
        this.lines = lines;
        this.clock = clock;
        this.patience = patience;
    }

    /** What was found last; empty for the moment that it takes after the setup was changed. Cheap to ask. */
    public Optional<Outlook> outlook() {
        return last.filter(found -> found.setup() == inForce.setup());
    }

    /**
     * Everything that a question is about.
     *
     * @param setup the one that holds
     * @param coverage of it, with these lines
     * @param health what is known of each line
     */
    public record Found(Setup setup, Coverage coverage, Map<LineHealth.Key, LineHealth> health, Instant now) {}

    /**
     * Asks something of the coverage of the setup that holds, with everything that is known of lines.
     *
     * @param from inclusive
     * @param to exclusive
     * @throws Problem 422 when that would take too long, 503 when others ask for longer than anybody waits
     */
    public <T> T ask(Instant from, Instant to, Function<Found, T> question) {
        Setup setup = inForce.setup();
        Set<AlarmKey> stops = stops();
        Map<LineHealth.Key, LineHealth> health = lines.all();
        Instant now = clock.instant();
        Set<String> proven = setup.contacts().values().stream()
                .filter(contact -> KnownLines.of(contact, health).stream().anyMatch(line -> line.proven(now)))
                .map(contact -> contact.id())
                .collect(Collectors.toSet());
        return alone(() -> {
                    try {
                        return question.apply(
                                new Found(setup, new Coverage(setup, stops, proven, from, to), health, now));
                    } catch (TooMuch tooMuch) {
                        throw Problem.of(HttpStatus.UNPROCESSABLE_CONTENT, tooMuch.getMessage());
                    }
                })
                .orElseThrow(() -> Problem.later(HttpStatus.SERVICE_UNAVAILABLE, BUSY, patience));
    }

    /**
     * The gaps of the next 400 days that are there after a change and were not before. What takes too long to find out, or
     * to have one's turn for, is not among them: an edit does not wait for ever.
     */
    public Opened opened(Setup before, Setup after) {
        Instant now = clock.instant();
        Set<AlarmKey> stops = stops();
        var was = new Coverage(before, stops, now, now.plus(Outlook.AHEAD));
        var is = new Coverage(after, stops, now, now.plus(Outlook.AHEAD));
        return alone(() -> {
                    var opened = new HashMap<String, List<Gap>>();
                    try {
                        for (String site : after.sites().keySet()) {
                            List<Gap> known = before.sites().containsKey(site) ? was.gaps(site) : List.of();
                            List<Gap> fresh = Gaps.opened(known, is.gaps(site));
                            if (!fresh.isEmpty()) {
                                opened.put(site, fresh);
                            }
                        }
                    } catch (TooMuch tooMuch) {
                        LOG.warn("what an edit opens was not looked for at every site: {}", tooMuch.getMessage());
                    }
                    return new Opened(now, opened);
                })
                .orElseGet(() -> {
                    LOG.warn("what an edit opens was not looked for at every site: {}", BUSY);
                    return new Opened(now, Map.of());
                });
    }

    /**
     * Works out the gaps ahead, unless what was found last still holds.
     *
     * @param goesOn asked between two sites; when it is false nothing comes of it
     */
    synchronized void recount(BooleanSupplier goesOn) {
        Setup setup = inForce.setup();
        Set<AlarmKey> stops = stops();
        Instant now = clock.instant();
        if (last.filter(found -> found.holds(setup, stops, now)).isPresent()) {
            return;
        }
        var coverage = new Coverage(setup, stops, now, now.plus(Outlook.AHEAD));
        var sites = new HashMap<String, Gaps.Ahead>();
        boolean whole = true;
        try {
            for (String site : setup.sites().keySet()) {
                if (!goesOn.getAsBoolean()) {
                    return;
                }
                Gaps.ahead(coverage.gaps(site)).ifPresent(ahead -> sites.put(site, ahead));
            }
        } catch (TooMuch tooMuch) {
            LOG.warn("the gaps ahead are not known of every site: {}", tooMuch.getMessage());
            whole = false;
        }
        last = Optional.of(new Outlook(setup, stops, now, sites, whole));
    }

    /** Whether another setup holds than the one that was looked at last. */
    boolean stale() {
        return outlook().isEmpty();
    }

    /** Empty when the turn did not come in time. */
    private <T> Optional<T> alone(Supplier<T> work) {
        if (!turn()) {
            return Optional.empty();
        }
        try {
            return Optional.of(work.get());
        } finally {
            one.release();
        }
    }

    private boolean turn() {
        try {
            return one.tryAcquire(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private Set<AlarmKey> stops() {
        return Stop.among(alarms.currentAt(Site.GATEWAY));
    }
}
