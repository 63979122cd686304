package yardlight.gateway.incoming;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Message;
import yardlight.db.incoming.IncomingText;
import yardlight.db.incoming.IncomingTexts;

/** Sends the answers to texts, by the channel that brought them. One that does not get out soon is of no use any more. */
final class AnswersOut {

    private static final Logger LOG = LoggerFactory.getLogger(AnswersOut.class);

    /** After this time the sender has long looked for themselves. */
    static final Duration USE = Duration.ofMinutes(15);

    /** Until an answer that did not get out is tried again, also by another gateway. */
    private static final Duration CLAIM = Duration.ofSeconds(60);

    private static final int AT_ONCE = 50;

    private final IncomingTexts texts;
    private final Map<String, Channel> channels;
    private final Asked asked;
    private final InstantSource clock;

    AnswersOut(IncomingTexts texts, Map<String, Channel> channels, Asked asked, InstantSource clock) {
        this.texts = texts;
        this.channels = channels;
        this.asked = asked;
        this.clock = clock;
    }

    /**
     * @param goesOn asked before each of them: what is left is claimed at the next start, or by another gateway
     */
    void look(BooleanSupplier goesOn) {
        Instant now = clock.instant();
        for (IncomingText text : texts.open(now.minus(USE), now, AT_ONCE)) {
            if (goesOn.getAsBoolean() && texts.claim(text.id(), now, now.plus(CLAIM))) {
                send(text);
            }
        }
    }

    private void send(IncomingText text) {
        if (!asked.welcome(text.sender(), text.words())) {
            texts.answered(text.id(), clock.instant());
            LOG.info("the answer to a text by {} is left out: its sender wants nothing more by it", text.channel());
            return;
        }
        Channel channel = channels.get(text.channel());
        Attempt attempt = channel == null
                ? Attempt.refused("there is no channel of this name any more")
                : channel.send(new Message(
                        name(text), text.sender(), text.answer(), text.receivedAt(), Optional.of(carriersName(text))));
        boolean done = attempt.outcome() != Attempt.Outcome.DEFERRED;
        if (done) {
            texts.answered(text.id(), clock.instant());
        }
        if (attempt.outcome() != Attempt.Outcome.ACCEPTED) {
            LOG.warn(
                    "the answer to a text by {} was {}, it is {}: {}",
                    text.channel(),
                    attempt.outcome().word(),
                    done ? "left at that" : "tried again",
                    attempt.detail());
        }
    }

    /** What the carrier calls the text. */
    private static String carriersName(IncomingText text) {
        return text.id().substring(text.channel().length() + 1);
    }

    /** The same answer sent again has the same name. */
    private static String name(IncomingText text) {
        return "answer." + UUID.nameUUIDFromBytes(text.id().getBytes(StandardCharsets.UTF_8));
    }
}
