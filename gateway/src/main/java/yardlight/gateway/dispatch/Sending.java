package yardlight.gateway.dispatch;

import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Attempt;
import yardlight.channels.Message;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.setup.Line;
import yardlight.gateway.link.RealLinks;
import yardlight.gateway.picture.Pictures;

/** Sends one notice, unless it is over by now, and has the outcome recorded. */
record Sending(
        Channels channels,
        Carriers carriers,
        Lines lines,
        ReceiptTimes receipts,
        RealLinks links,
        Pictures pictures,
        Outbox outbox,
        Recorder recorder,
        InstantSource clock,
        DispatchMeters meters) {

    private static final Logger LOG = LoggerFactory.getLogger(Sending.class);

    /** The one channel on which a picture is seen; a carrier that makes a text of a mail would make a nuisance of it. */
    private static final String MAIL = "mail";

    /** Runs {@code then} when the notice is off our hands, however that came about. */
    void send(Outgoing outgoing, Runnable then) {
        try {
            if (outbox.wanted(outgoing)) {
                attempt(outgoing, then);
            } else {
                outbox.done(outgoing);
                then.run();
            }
        } catch (Throwable mistake) {
            giveBack(outgoing, mistake, then);
        }
    }

    /** It is not sent now after all. */
    void giveBack(Outgoing outgoing, Runnable then) {
        try {
            outbox.giveBack(outgoing);
        } finally {
            then.run();
        }
    }

    private void giveBack(Outgoing outgoing, Throwable mistake, Runnable then) {
        LOG.error("notice {} was not sent and is tried again", outgoing.id(), mistake);
        giveBack(outgoing, then);
    }

    private void attempt(Outgoing outgoing, Runnable then) {
        Optional<Line> line = lines.of(outgoing.notice());
        String channel = line.map(Line::channel).orElse(outgoing.channel());
        Attempt attempt = line.map(to -> attempt(outgoing, to))
                .orElseGet(() -> Attempt.refused("the contact has no such line any more"));
        meters.sent(channel, attempt.outcome());
        carriers.heard(channel, attempt);
        var judgement =
                new Judgement(outgoing, channel, clock.instant(), receipts.of(channel, attempt), outbox::nextRung);
        recorder.record(outgoing, judgement.of(attempt), then);
    }

    private Attempt attempt(Outgoing outgoing, Line line) {
        return channels.named(line.channel())
                .map(channel -> channel.send(message(outgoing, line)))
                .orElseGet(() -> Attempt.deferred("channel " + line.channel() + " is not set up"));
    }

    private Message message(Outgoing outgoing, Line line) {
        return new Message(
                MessageIds.of(outgoing.id()),
                line.address(),
                links.text(outgoing.notice()),
                outgoing.queuedAt(),
                Optional.empty(),
                line.channel().equals(MAIL) ? pictures.of(outgoing.notice()) : Optional.empty());
    }
}
