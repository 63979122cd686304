package yardlight.gateway.lane;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.db.journal.ReadingRecord;
import yardlight.db.journal.ReadingRows;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.db.journal.Wants;
import yardlight.db.reading.Series;
import yardlight.escalation.Answer;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;
import yardlight.escalation.reading.Reading;

/**
 * What a box measured, in one go: what is there already is taken out, the rest is one stimulus in the order of time, and all of
 * it is stored.
 *
 * @param oldest from when on readings are kept
 * @param spent whether only what changes an alarm is taken
 */
record ReadingsWork(String box, List<PostedReading> readings, Instant oldest, boolean spent)
        implements Work<List<Fate>> {

    /** A reading is one small row and mostly no decision: so many weigh as much as an event. */
    private static final int FOR_AN_EVENT = 10;

    @Override
    public void wants(Wants wants, Collection<String> names) {
        wants.add(measured(readings.stream().map(PostedReading::reading)));
    }

    @Override
    public List<Fate> take(Turn turn) {
        ReadingRows rows = turn.writing().readings();
        List<ReadingRecord> records = new ArrayList<>();
        for (PostedReading posted : readings) {
            records.add(new ReadingRecord(series(rows, posted), posted.kept(), at(posted.reading(), turn.now())));
        }
        List<Fate> fates = fates(rows, records, turn.now());
        var fresh = new ArrayList<Reading>();
        for (int i = 0; i < fates.size(); i++) {
            if (fates.get(i) == Fate.KEPT) {
                Reading said = readings.get(i).reading();
                fresh.add(new Reading(
                        said.site(), said.point(), said.value(), records.get(i).at()));
            }
        }
        decide(turn, fresh);
        for (int i = 0; i < fates.size(); i++) {
            if (fates.get(i) == Fate.KEPT) {
                rows.keep(records.get(i));
            }
        }
        return fates;
    }

    private void decide(Turn turn, List<Reading> fresh) {
        Decision decision = turn.decide(measured(fresh.stream()));
        if (decision.answer() instanceof Answer.Refusal refusal) {
            throw new UnknownBox(refusal.reason());
        }
        if (spent && decision.changes().alarms().isEmpty()) {
            throw new TooManyPosts(box);
        }
        turn.apply(decision);
    }

    private Stimulus.Measured measured(Stream<Reading> of) {
        return new Stimulus.Measured(
                box, of.sorted(Comparator.comparing(Reading::at)).toList());
    }

    /** What has been summed up cannot be added to, and what would be let go at once is not taken. */
    private List<Fate> fates(ReadingRows rows, List<ReadingRecord> records, Instant now) {
        List<Fate> fates = rows.fates(records, now);
        var all = new ArrayList<Fate>();
        for (int i = 0; i < fates.size(); i++) {
            all.add(records.get(i).at().isBefore(oldest) ? Fate.TOO_OLD : fates.get(i));
        }
        return all;
    }

    /** None is later than the decision. */
    private static Instant at(Reading reading, Instant now) {
        return reading.at().isAfter(now) ? now.truncatedTo(ChronoUnit.MILLIS) : reading.at();
    }

    private static Series series(ReadingRows rows, PostedReading posted) {
        Reading reading = posted.reading();
        Optional<Series> known = rows.series(reading.site(), reading.point());
        if (known.isEmpty()) {
            return rows.open(reading.site(), reading.point(), posted.unit());
        }
        Series series = known.get();
        if (posted.unit().isEmpty() || posted.unit().equals(series.unit())) {
            return series;
        }
        if (series.unit().isEmpty()) {
            return rows.adopt(series, posted.unit().get());
        }
        if (posted.anew()) {
            return rows.open(reading.site(), reading.point(), posted.unit());
        }
        throw new OtherUnit(reading.point());
    }

    /** Points by the thousand say each minute that all is as before; one by one, each would cost a transaction. */
    @Override
    public boolean patient() {
        return true;
    }

    @Override
    public int weight() {
        return Math.max(1, readings.size() / FOR_AN_EVENT);
    }

    @Override
    public String about() {
        String first = readings.stream().limit(1).toList().toString();
        return readings.size() + " readings of " + box + ", the first: " + first;
    }
}
