package yardlight.gateway.dispatch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yardlight.channels.Attempt;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Retry;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;
import yardlight.escalation.Stimulus.Fate;
import yardlight.gateway.lane.Tried;

/**
 * What an attempt means for its notice. One that was put off goes out again soon, and at the latest when its next rung is
 * due. Nobody knows whether an attempt without an answer was taken: such a notice goes out once more under the same id,
 * and then the engine tries another line or counts it as handed over, with the doubt on record. So it is never lost and
 * never sent over and over.
 *
 * @param receiptWithin for how long a receipt is waited for, if one is expected
 * @param nextRung asked only when it matters
 */
record Judgement(
        Outgoing sent,
        String channel,
        Instant now,
        Optional<Duration> receiptWithin,
        Function<Outgoing, Optional<Instant>> nextRung) {

    private static final int MOST_DOUBTS = 1;
    private static final Duration LEAST_WAIT = Duration.ofSeconds(1);

    Tried of(Attempt attempt) {
        var record = new AttemptRecord(
                sent.id(),
                now,
                channel,
                sent.notice().line(),
                attempt.outcome().word(),
                attempt.detail(),
                attempt.reference());
        String words = channel + ": " + attempt.detail();
        return switch (attempt.outcome()) {
            case ACCEPTED -> settled(record, Fate.HANDED_OVER, words, receiptWithin);
            case REFUSED -> settled(record, Fate.REFUSED, words, Optional.empty());
            case DEFERRED -> {
                Instant at = beforeTheRung(now.plus(longer(Backoff.after(sent.deferrals()), attempt.retryAfter())));
                var retry = new Retry(sent.id(), sent.queuedAt(), at, sent.deferrals() + 1, sent.doubts());
                yield again(record, retry, "put off until " + at + ", " + words);
            }
            case UNKNOWN -> {
                if (sent.doubts() >= MOST_DOUBTS) {
                    yield settled(
                            record,
                            Fate.UNCERTAIN,
                            words + " (twice without an answer: it may not have been taken)",
                            Optional.empty());
                }
                Instant at = beforeTheRung(now.plus(Backoff.after(0)));
                var retry = new Retry(sent.id(), sent.queuedAt(), at, sent.deferrals(), sent.doubts() + 1);
                yield again(record, retry, "sent, but no answer came; once more at " + at + ", " + words);
            }
        };
    }

    private Instant beforeTheRung(Instant at) {
        Instant earliest = now.plus(LEAST_WAIT);
        return nextRung.apply(sent)
                .filter(at::isAfter)
                .map(rung -> rung.isAfter(earliest) ? rung : earliest)
                .orElse(at);
    }

    private Tried settled(AttemptRecord record, Fate fate, String words, Optional<Duration> receipt) {
        var said = new Stimulus.NoticeFate(record.notice(), sent.notice().line(), fate, words, receipt);
        return new Tried(record, Optional.of(said), Optional.empty(), List.of());
    }

    private Tried again(AttemptRecord record, Retry retry, String words) {
        return new Tried(record, Optional.empty(), Optional.of(retry), List.of(line(words)));
    }

    private Entry line(String words) {
        return new Entry(Entry.What.ATTEMPT, sent.notice().about(), words);
    }

    private static Duration longer(Duration ours, Optional<Duration> theirs) {
        return theirs.filter(asked -> asked.compareTo(ours) > 0).orElse(ours);
    }
}
