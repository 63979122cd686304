package yardlight.gateway.dispatch;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Attempt;
import yardlight.escalation.Stimulus;
import yardlight.gateway.lane.Intake;

/** A circuit for each carrier. What it means for people that one is broken the engine decides: it is told. */
final class Carriers {

    private static final Logger LOG = LoggerFactory.getLogger(Carriers.class);

    private final Intake intake;
    private final Supplier<Set<String>> known;
    private final InstantSource clock;
    private final Map<String, Circuit> circuits = new LinkedHashMap<>();

    /** @param known the channels whose carriers count as down */
    Carriers(Collection<String> channels, Intake intake, Supplier<Set<String>> known, InstantSource clock) {
        this.intake = intake;
        this.known = known;
        this.clock = clock;
        channels.forEach(channel -> circuits.put(channel, Circuit.WELL));
    }

    /** How many messages may be handed to the carrier now, of so many that there is room for. */
    synchronized int lets(String channel, int room, int inHand) {
        Circuit circuit = circuits.get(channel);
        if (circuit instanceof Circuit.Trial) {
            return inHand == 0 ? Math.min(1, room) : 0;
        }
        return circuit instanceof Circuit.Open ? 0 : room;
    }

    /** Whether the carrier takes nothing: what was claimed for it before is given back. */
    synchronized boolean broken(String channel) {
        return circuits.get(channel) instanceof Circuit.Open;
    }

    /** What became of an attempt. */
    synchronized void heard(String channel, Attempt attempt) {
        circuits.computeIfPresent(channel, (name, before) -> {
            Circuit after = attempt.general() ? before.failed(clock.instant()) : before.passed();
            if (after instanceof Circuit.Open && !(before instanceof Circuit.Open)) {
                LOG.warn("nothing is sent by {} for now: {}", name, attempt.detail());
            }
            return after;
        });
    }

    /** Whether it is time to knock. */
    synchronized boolean wantsKnock(String channel) {
        return circuits.get(channel) instanceof Circuit.Open open && open.due(clock.instant());
    }

    /**
     * What came of a knock.
     *
     * @param trouble why it was in vain; empty when the carrier is there
     */
    void knocked(String channel, Optional<String> trouble) {
        synchronized (this) {
            Instant now = clock.instant();
            circuits.computeIfPresent(channel, (name, before) -> {
                if (before instanceof Circuit.Open open) {
                    return trouble.isEmpty() ? open.answered() : open.inVain(now);
                }
                return before;
            });
        }
        tell(new Stimulus.Carrier(channel, trouble.isPresent(), trouble.orElse("it answers")));
    }

    /**
     * A carrier that counts as down although we know nothing against it: another gateway said so, or this one before it was
     * started again. Somebody has to find out.
     */
    void compare() {
        Set<String> down = known.get();
        synchronized (this) {
            Instant now = clock.instant();
            down.forEach(channel -> circuits.computeIfPresent(
                    channel, (name, circuit) -> circuit instanceof Circuit.Open ? circuit : new Circuit.Open(now, 0)));
        }
    }

    /** Says it again at the next knock if it could not be stored. */
    private void tell(Stimulus.Carrier said) {
        intake.put(said).whenComplete((answer, failure) -> {
            if (failure != null) {
                LOG.warn("not on record for now: {} ({})", said, failure.getMessage());
            }
        });
    }
}
