package yardlight.gateway.dispatch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Retry;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;
import yardlight.escalation.Stimulus.Fate;
import yardlight.gateway.lane.Tried;

/**
 * What an attempt means for its notice. Nobody knows whether an attempt without an answer was taken: such a notice goes
 * out once more under the same id, and then counts as handed over, with the doubt on record. So it is never lost and
 * never sent over and over.
 */
final class Judgement {

    private static final int MOST_DOUBTS = 1;

    private Judgement() {}

    static Tried of(Outgoing sent, String channel, Attempt attempt, Instant now) {
        var record =
                new AttemptRecord(sent.id(), now, channel, attempt.outcome().word(), attempt.detail());
        String words = channel + ": " + attempt.detail();
        return switch (attempt.outcome()) {
            case ACCEPTED -> settled(record, Fate.HANDED_OVER, words);
            case REFUSED -> settled(record, Fate.REFUSED, words);
            case DEFERRED -> {
                Duration wait = longer(Backoff.after(sent.deferrals()), attempt.retryAfter());
                var retry = new Retry(sent.id(), now.plus(wait), sent.deferrals() + 1, sent.doubts());
                yield again(record, retry, line(sent, "put off until " + retry.at() + ", " + words));
            }
            case UNKNOWN -> {
                if (sent.doubts() >= MOST_DOUBTS) {
                    yield settled(
                            record, Fate.HANDED_OVER, words + " (twice without an answer: it may not have been taken)");
                }
                Instant at = now.plus(Backoff.after(0));
                var retry = new Retry(sent.id(), at, sent.deferrals(), sent.doubts() + 1);
                yield again(record, retry, line(sent, "sent, but no answer came; once more at " + at + ", " + words));
            }
        };
    }

    private static Tried settled(AttemptRecord record, Fate fate, String words) {
        var said = new Stimulus.NoticeFate(record.notice(), fate, words);
        return new Tried(record, Optional.of(said), Optional.empty(), List.of());
    }

    private static Tried again(AttemptRecord record, Retry retry, Entry line) {
        return new Tried(record, Optional.empty(), Optional.of(retry), List.of(line));
    }

    private static Entry line(Outgoing sent, String words) {
        Map<String, String> about = Map.of(
                "notice",
                sent.id(),
                "contact",
                sent.notice().contact(),
                "callout",
                sent.notice().callouts().get(0));
        return new Entry(Entry.What.ATTEMPT, about, words);
    }

    private static Duration longer(Duration ours, Optional<Duration> theirs) {
        return theirs.filter(asked -> asked.compareTo(ours) > 0).orElse(ours);
    }
}
