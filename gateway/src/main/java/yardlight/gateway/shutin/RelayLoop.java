package yardlight.gateway.shutin;

import java.time.Duration;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import yardlight.channels.Attempt;
import yardlight.channels.http.Relay;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.Answer;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestTrigger;
import yardlight.escalation.shutin.Standing;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;
import yardlight.gateway.clock.Worker;
import yardlight.gateway.lane.Lane;

/**
 * Carries requests to relays. That one is under way is stored before it leaves, and what came of it afterwards: whatever
 * happens in between, it is never taken for not sent. Without a relay in the properties nothing runs here.
 */
@Component
class RelayLoop implements SmartLifecycle, Pulsing {

    private static final Logger LOG = LoggerFactory.getLogger(RelayLoop.class);
    private static final Duration POLL = Duration.ofSeconds(2);

    /** After the lane, like what is due. */
    private static final int PHASE = 200;

    private final Map<String, Relay> relays;
    private final ShutIns shutIns;
    private final Lane lane;
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("relay");

    RelayLoop(ObjectProvider<Relay> relays, ShutIns shutIns, Lane lane) {
        this.relays = relays.stream().collect(Collectors.toMap(Relay::name, Function.identity()));
        this.shutIns = shutIns;
        this.lane = lane;
    }

    @Override
    public void start() {
        if (!relays.isEmpty()) {
            worker.start(this::run);
        }
    }

    @Override
    public void stop() {
        if (worker.running()) {
            worker.stop(bell::ring);
        }
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    @Override
    public Pulse pulse() {
        return worker.pulse();
    }

    private void run() {
        while (worker.running()) {
            worker.beat();
            try {
                look();
                bell.await(POLL);
            } catch (InterruptedException e) {
                worker.end();
            } catch (RuntimeException e) {
                LOG.warn("requests to relays wait: {}", e.getMessage());
                rest();
            } catch (Throwable mistake) {
                LOG.error("requests to relays go on; if this is seen again, restart the gateway", mistake);
                rest();
            }
        }
    }

    private void rest() {
        try {
            bell.await(POLL);
        } catch (InterruptedException e) {
            worker.end();
        }
    }

    /** Each request that is to go to a relay of ours, one try. */
    void look() {
        for (Standing standing : shutIns.forRelays()) {
            standing.open().ifPresent(request -> {
                Relay relay = relays.get(request.through());
                if (relay != null) {
                    attempt(standing.site(), request, relay);
                }
            });
        }
    }

    private void attempt(String site, Request request, Relay relay) {
        worker.beat();
        Answer answer = lane.decide(new Stimulus.ShutIn(site, new ShutInSaid.Try(request.id())));
        if (answer instanceof Answer.Offered) {
            Attempt attempt = relay.ask(request.id(), site, request.askedAt(), request.expiresAt());
            lane.decide(new Stimulus.ShutIn(
                    site, new ShutInSaid.Tried(request.id(), meaning(attempt.outcome()), attempt.detail())));
        }
    }

    private static RequestTrigger meaning(Attempt.Outcome outcome) {
        return switch (outcome) {
            case ACCEPTED -> RequestTrigger.TAKE;
            case REFUSED -> RequestTrigger.REFUSE;
            case DEFERRED -> RequestTrigger.NOT_TAKEN;
            case UNKNOWN -> RequestTrigger.UNKNOWN;
        };
    }
}
