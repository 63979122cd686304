package yardlight.escalation;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.heartbeat.Arrivals;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.heartbeat.Patience;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;

/** What boxes do not say, and what they say of their power: silence past the deadline, and feeds that are off. */
final class Silence {

    private final Draft draft;
    private final Reports reports;
    private final Absences absences;
    private final Returns returns;
    private final Feeds feeds;
    private final Outside outside;

    Silence(Draft draft, Calls calls) {
        this.draft = draft;
        this.reports = new Reports(draft, calls);
        var verdicts = new Verdicts(draft, reports, calls.notices());
        this.absences = new Absences(draft, reports, verdicts);
        this.returns = new Returns(draft, reports, verdicts);
        this.outside = new Outside(draft);
        this.feeds = new Feeds(draft, reports, returns);
    }

    Answer beat(Stimulus.Beat beat) {
        Box box = draft.setup().boxes().get(beat.box());
        if (box == null) {
            return new Answer.Refusal("box must be set up: " + beat.box());
        }
        hear(box, Optional.of(beat.heartbeat()), beat.open());
        // Most signs of life change no alarm, and there are many of them: then nothing at the site has to be looked at.
        if (feeds.said(box, beat.heartbeat().feeds().keySet())) {
            reports.finish(box.site());
        }
        return new Answer.Done();
    }

    /** Any post is a sign of life. */
    void heard(Box box) {
        hear(box, Optional.empty(), draft.now());
    }

    /**
     * A box's deadline has passed, unless it was heard since. One that passed while nobody could post says nothing of the
     * box: it gets its patience anew, once until it is heard again. Otherwise a box whose gateway is away again and again
     * would never be found silent.
     */
    Answer due(Stimulus.BoxDue due) {
        String id = due.box();
        Box box = draft.setup().boxes().get(id);
        Optional<BoxWatch> late = draft.box(id).filter(watch -> watch.overdue(draft.now()));
        if (late.isPresent() && box == null) {
            draft.put(late.get().with(Optional.empty()));
        }
        if (box == null || late.isEmpty()) {
            return new Answer.Done();
        }
        if (late.get().silent()) {
            returns.notStarted(box, late.get());
            return new Answer.Done();
        }
        Optional<Instant> anew = patience(box)
                .map(patience -> due.open().plus(patience.after(late.get().arrivals())))
                .filter(draft.now()::isBefore);
        if (anew.isPresent() && !hadItAnew(box, late.get())) {
            draft.put(late.get().with(anew));
            return new Answer.Done();
        }
        if (outside.lost(reports, late.get(), box.every().orElseThrow())) {
            // Nothing arrives from anybody: what comes next says nothing of the box's interval.
            BoxWatch unheard = late.get().with(late.get().arrivals().interrupted());
            draft.put(unheard.with(
                    patience(box).map(patience -> draft.now().plus(patience.after(unheard.arrivals())))));
        } else {
            absences.begin(box, late.get(), due.open());
        }
        return new Answer.Done();
    }

    /**
     * Another setup: by when known boxes are expected, and that the silence of one that is gone is over. A box that was
     * never heard is not expected before its first post: it may not be installed yet, and the board says so. One that was
     * heard, and is put back or moved to another site, is expected: it may have died in between.
     */
    void setup(Setup before) {
        for (Box old : before.boxes().values()) {
            Box now = draft.setup().boxes().get(old.id());
            if (!old.equals(now)) {
                draft.box(old.id()).ifPresent(watch -> changed(old, Optional.ofNullable(now), watch));
            }
        }
        draft.setup().boxes().values().stream()
                .filter(box -> !stays(before.boxes().get(box.id()), Optional.of(box)))
                .forEach(box -> draft.box(box.id()).ifPresent(watch -> draft.put(watch.with(missedAnew(box, watch)))));
        returns.setup();
    }

    private static boolean stays(Box old, Optional<Box> now) {
        return old != null && now.filter(box -> box.site().equals(old.site())).isPresent();
    }

    private void changed(Box old, Optional<Box> now, BoxWatch watch) {
        boolean stays = stays(old, now);
        boolean expected = stays && now.get().every().isPresent();
        if (expected && !watch.silent()) {
            boolean same = old.learned() == now.get().learned()
                    && old.every().equals(now.get().every());
            draft.put(expected(same ? watch : watch.with(Arrivals.NONE), now.get()));
        } else if (!expected) {
            Heartbeat said = stays ? watch.last() : Heartbeat.BARE;
            draft.put(watch.unexpected(said));
            gone(old, watch, stays);
        }
    }

    private void gone(Box old, BoxWatch watch, boolean stays) {
        returns.gone(old, watch);
        if (draft.setup().sites().containsKey(old.site())) {
            if (!stays) {
                feeds.said(old, watch.last().feeds().keySet());
            }
            reports.finish(old.site());
        }
    }

    private static BoxWatch expected(BoxWatch watch, Box box) {
        return watch.with(missedAt(box, watch));
    }

    /** Its deadline is later than its last sign of life asks for. What was learned is not stored to the millisecond. */
    private static boolean hadItAnew(Box box, BoxWatch late) {
        return missedAt(box, late)
                .filter(at -> late.deadline().orElseThrow().isBefore(at.plusSeconds(1)))
                .isEmpty();
    }

    /** When a box is missed that could be heard all the time; empty when it need not say that it lives. */
    static Optional<Instant> missedAt(Box box, BoxWatch watch) {
        return patience(box).map(patience -> watch.heardAt().plus(patience.after(watch.arrivals())));
    }

    /** The same of one that was not expected until now: it has its patience from now on when its time has passed. */
    private Optional<Instant> missedAnew(Box box, BoxWatch watch) {
        return missedAt(box, watch)
                .flatMap(at -> at.isAfter(draft.now())
                        ? Optional.of(at)
                        : patience(box).map(patience -> draft.now().plus(patience.after(watch.arrivals()))));
    }

    private static Optional<Patience> patience(Box box) {
        return box.every().map(every -> new Patience(every, box.grace(), box.learned()));
    }

    private void hear(Box box, Optional<Heartbeat> said, Instant open) {
        Optional<BoxWatch> before = draft.box(box.id());
        BoxWatch watch = before.orElse(new BoxWatch(box.id(), draft.now(), Optional.empty(), false, Heartbeat.BARE));
        Optional<Patience> patience = patience(box);
        Arrivals arrivals =
                patience.map(one -> one.heard(watch, said, draft.now(), open)).orElse(Arrivals.NONE);
        draft.put(watch.with(arrivals)
                .heard(draft.now(), patience.map(one -> one.after(arrivals)), said.orElse(Heartbeat.BARE)));
        if (watch.silent()) {
            draft.log(
                    Entry.What.BOX,
                    Map.of("site", box.site(), "box", box.id()),
                    "box " + box.id() + " is back, silent since " + watch.heardAt());
        }
        returns.back(box, watch, said.orElse(Heartbeat.BARE));
        outside.heard(reports);
    }
}
