package yardlight.gateway.lane;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.journal.Journal;
import yardlight.db.journal.JournalTrouble;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Stored;
import yardlight.db.journal.Wants;
import yardlight.db.journal.Writing;
import yardlight.escalation.Escalator;
import yardlight.escalation.wording.Links;

/** Takes a batch of works through one transaction. */
final class Batch {

    private static final Logger LOG = LoggerFactory.getLogger(Batch.class);

    /** For how long a box's own name for an event is remembered. */
    private static final Duration REMEMBERED = Duration.ofDays(30);

    private final Journal journal;
    private final CurrentSetup current;
    private final Links links;
    private final InstantSource clock;
    private final Hearing hearing;

    Batch(Journal journal, CurrentSetup current, Links links, InstantSource clock, Hearing hearing) {
        this.journal = journal;
        this.current = current;
        this.links = links;
        this.clock = clock;
        this.hearing = hearing;
    }

    /** Looks whether another setup holds by now. */
    void look() {
        try (Writing writing = journal.begin()) {
            current.follow(writing);
        }
    }

    /**
     * Decides and stores all of it; nobody is answered yet.
     *
     * @throws JournalTrouble when nothing of it was stored
     */
    Stored run(List<Handed<?>> batch) {
        try (Writing writing = journal.begin()) {
            Instant now = writing.now(clock.instant());
            current.follow(writing);
            var wants = new Wants(current.setup(), now);
            var names = new ArrayList<String>();
            batch.forEach(handed -> handed.wants(wants, names));
            Sheet sheet = writing.sheet(current.setup());
            sheet.prepare(wants);
            var escalator = new Escalator(links, sheet::nextCode);
            Optional<Instant> known = writing.heardFrom();
            Optional<Instant> back = hearing.back(writing.lastAt(), known, now);
            back.ifPresent(writing::heardFrom);
            var turn = new Turn(writing, sheet, escalator, now, hearing.since(back));
            turn.remember(writing.known(names, now.minus(REMEMBERED)));
            batch.forEach(handed -> take(handed, turn));
            Stored stored = writing.commit(sheet, now);
            hearing.stored(known, back);
            turn.newSetup().ifPresent(next -> current.replace(next.version(), next.setup()));
            return stored;
        }
    }

    /** A refusal or a mistake of ours concerns this one only; trouble with the database concerns all. */
    private static void take(Handed<?> handed, Turn turn) {
        try {
            handed.take(turn);
        } catch (JournalTrouble trouble) {
            throw trouble;
        } catch (TooManyPosts | UnknownBox | OtherUnit refused) {
            handed.failed(refused);
        } catch (RuntimeException mistake) {
            LOG.error("no decision could be made on {}", handed.about(), mistake);
            handed.failed(mistake);
        }
    }
}
