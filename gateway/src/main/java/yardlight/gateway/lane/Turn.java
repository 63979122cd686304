package yardlight.gateway.lane;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Changes;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.setup.Setup;

/** One transaction as the works see it: what is known by now, and where what they decide goes. */
final class Turn {

    /** A setup that takes effect with this transaction. */
    record NewSetup(int version, Setup setup) {}

    private final Writing writing;
    private final Sheet sheet;
    private final Escalator escalator;
    private final Instant now;
    private final Instant open;
    private final Map<String, Optional<String>> known = new HashMap<>();
    private Optional<NewSetup> newSetup = Optional.empty();

    /** @param open since when every box could post */
    Turn(Writing writing, Sheet sheet, Escalator escalator, Instant now, Instant open) {
        this.writing = writing;
        this.sheet = sheet;
        this.escalator = escalator;
        this.now = now;
        this.open = open;
    }

    Instant now() {
        return now;
    }

    Sheet sheet() {
        return sheet;
    }

    Writing writing() {
        return writing;
    }

    /** Asks the engine; changes nothing. */
    Decision decide(Stimulus stimulus) {
        return escalator.decide(sheet, stimulus.openSince(open), now);
    }

    void apply(Decision decision) {
        apply(decision.changes());
        log(decision.entries());
    }

    private void apply(Changes changes) {
        sheet.apply(changes);
    }

    void log(List<Entry> entries) {
        writing.log(now, entries);
    }

    /** The events of this name that came before, in this batch or earlier; inside, the alarm that it belonged to. */
    Optional<Optional<String>> known(String name) {
        return Optional.ofNullable(known.get(name));
    }

    void remember(Map<String, Optional<String>> before) {
        known.putAll(before);
    }

    void remember(String name, Optional<String> alarm) {
        known.put(name, alarm);
    }

    void setup(String document, Stimulus.SetupChanged change) {
        int version = writing.setupDocument(document, change.by(), now);
        writing.feedsOnlyOf(change.setup().contacts().keySet());
        sheet.setup(change.setup());
        newSetup = Optional.of(new NewSetup(version, change.setup()));
    }

    Optional<NewSetup> newSetup() {
        return newSetup;
    }
}
