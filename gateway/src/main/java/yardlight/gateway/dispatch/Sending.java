package yardlight.gateway.dispatch;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Message;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.setup.Line;

/** Sends one notice, unless it is over by now, and has the outcome recorded. */
final class Sending {

    private static final Logger LOG = LoggerFactory.getLogger(Sending.class);

    private final Map<String, Channel> channels;
    private final Lines lines;
    private final Outbox outbox;
    private final Recorder recorder;
    private final InstantSource clock;
    private final DispatchMeters meters;

    Sending(
            Map<String, Channel> channels,
            Lines lines,
            Outbox outbox,
            Recorder recorder,
            InstantSource clock,
            DispatchMeters meters) {
        this.channels = Map.copyOf(channels);
        this.lines = lines;
        this.outbox = outbox;
        this.recorder = recorder;
        this.clock = clock;
        this.meters = meters;
    }

    /** Runs {@code then} when the notice is off our hands, however that came about. */
    void send(Outgoing outgoing, Runnable then) {
        try {
            if (!outbox.wanted(outgoing)) {
                outbox.done(outgoing);
                then.run();
                return;
            }
            Optional<Line> line = lines.of(outgoing.notice());
            String channel = line.map(Line::channel).orElse(outgoing.channel());
            Attempt attempt = line.map(to -> attempt(outgoing, to))
                    .orElseGet(() -> Attempt.refused("the contact has no such line any more"));
            Instant now = clock.instant();
            meters.sent(channel, attempt.outcome());
            recorder.record(outgoing, Judgement.of(outgoing, channel, attempt, now), then);
        } catch (RuntimeException e) {
            LOG.error("notice {} was not sent and is tried again", outgoing.id(), e);
            outbox.giveBack(outgoing);
            then.run();
        }
    }

    private Attempt attempt(Outgoing outgoing, Line line) {
        Channel channel = channels.get(line.channel());
        if (channel == null) {
            return Attempt.deferred("channel " + line.channel() + " is not set up");
        }
        return channel.send(new Message(
                MessageIds.of(outgoing.id()), line.address(), outgoing.notice().text(), outgoing.queuedAt()));
    }
}
