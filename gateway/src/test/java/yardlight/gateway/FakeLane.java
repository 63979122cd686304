package yardlight.gateway;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.lane.PostedEvent;
import yardlight.gateway.lane.PostedReading;
import yardlight.gateway.lane.TooManyPosts;

/** A lane that remembers what it was handed, stores nothing, and answers what a test wants. */
public final class FakeLane implements Lane {

    public final List<PostedEvent> events = new ArrayList<>();
    public final List<PostedReading> readings = new ArrayList<>();
    public final List<Heartbeat> heartbeats = new ArrayList<>();
    /** Boxes that were heard without an event or a heartbeat. */
    public final List<String> signs = new ArrayList<>();

    public final List<Stimulus> decided = new ArrayList<>();
    public Optional<RuntimeException> trouble = Optional.empty();
    public Answer answer = new Answer.Done();
    public boolean nothingIsNews;
    /** Whether the trouble is over with the first call that it met. */
    public boolean troubleOnce;

    public void clear() {
        events.clear();
        readings.clear();
        heartbeats.clear();
        signs.clear();
        decided.clear();
        trouble = Optional.empty();
        answer = new Answer.Done();
        nothingIsNews = false;
        troubleOnce = false;
    }

    @Override
    public List<Answer.Result> events(String box, List<PostedEvent> posted, boolean spent) {
        trouble.ifPresent(thrown -> {
            throw thrown;
        });
        if (spent && nothingIsNews) {
            throw new TooManyPosts(box);
        }
        events.addAll(posted);
        if (posted.isEmpty()) {
            signs.add(box);
        }
        return posted.stream()
                .map(one -> new Answer.Result(
                        Outcome.OCCURRED,
                        Optional.of(one.report().key().site() + "."
                                + one.report().key().point() + "."
                                + one.report().key().condition() + ".1")))
                .toList();
    }

    @Override
    public List<Fate> readings(String box, List<PostedReading> posted, Instant oldest, boolean spent) {
        trouble.ifPresent(thrown -> {
            trouble = troubleOnce ? Optional.empty() : trouble;
            throw thrown;
        });
        if (spent && nothingIsNews) {
            throw new TooManyPosts(box);
        }
        readings.addAll(posted);
        return posted.stream()
                .map(one -> one.reading().at().isBefore(oldest) ? Fate.TOO_OLD : Fate.KEPT)
                .toList();
    }

    @Override
    public Answer heartbeat(String box, Heartbeat heartbeat) {
        trouble.ifPresent(thrown -> {
            throw thrown;
        });
        heartbeats.add(heartbeat);
        return answer;
    }

    @Override
    public Answer decide(Stimulus stimulus) {
        trouble.ifPresent(thrown -> {
            throw thrown;
        });
        decided.add(stimulus);
        return answer;
    }

    @Override
    public Answer setup(String document, Stimulus.SetupChanged change) {
        return decide(change);
    }

    @Override
    public Answer setup(String document, Stimulus.SetupChanged change, int seen) {
        return decide(change);
    }
}
