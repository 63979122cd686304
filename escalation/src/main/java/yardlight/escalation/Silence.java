package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;

/** What boxes do not say, and what they say of their power: silence past the deadline, and feeds that are off. */
final class Silence {

    private final Draft draft;
    private final Reports reports;

    Silence(Draft draft, Calls calls) {
        this.draft = draft;
        this.reports = new Reports(draft, calls);
    }

    Answer beat(Stimulus.Beat beat) {
        Box box = draft.setup().boxes().get(beat.box());
        if (box == null) {
            return new Answer.Refusal("box must be set up: " + beat.box());
        }
        boolean news = hear(box, Optional.of(beat.heartbeat()));
        for (String feed : beat.heartbeat().feeds().keySet()) {
            news |= feed(box, feed);
        }
        finish(box, news);
        return new Answer.Done();
    }

    /** Any post is a sign of life. */
    void heard(Box box) {
        finish(box, hear(box, Optional.empty()));
    }

    /** Most signs of life change no alarm, and there are many of them: then nothing at the site has to be looked at. */
    private void finish(Box box, boolean news) {
        if (news) {
            reports.finish(box.site());
        }
    }

    /**
     * A box's deadline has passed, unless it was heard since. One that passed while nobody could post says nothing of the
     * box: it gets its patience anew.
     */
    Answer due(Stimulus.BoxDue due) {
        String id = due.box();
        Box box = draft.setup().boxes().get(id);
        Optional<BoxWatch> late = draft.box(id)
                .filter(watch -> watch.deadline()
                        .filter(deadline -> !deadline.isAfter(draft.now()))
                        .isPresent());
        if (late.isPresent() && box == null) {
            draft.put(late.get().with(Optional.empty()));
        }
        if (box == null || late.isEmpty()) {
            return new Answer.Done();
        }
        Optional<Instant> anew = patience(box).map(due.open()::plus).filter(draft.now()::isBefore);
        if (anew.isPresent()) {
            draft.put(late.get().with(anew));
            return new Answer.Done();
        }
        draft.put(late.get().gone());
        Verdict verdict = Verdict.SILENT;
        log(box, "box " + id + " has been silent since " + late.get().heardAt());
        say(box, BoxAlarms.silence(box.site(), verdict), true);
        reports.finish(box.site());
        return new Answer.Done();
    }

    /**
     * Another setup: by when known boxes are expected, and that the silence of one that is gone is over. A box that was
     * never heard is not expected before its first post: it may not be installed yet, and the board says so.
     */
    void setup(Setup before) {
        for (Box old : before.boxes().values()) {
            Box now = draft.setup().boxes().get(old.id());
            if (!old.equals(now)) {
                draft.box(old.id()).ifPresent(watch -> changed(old, Optional.ofNullable(now), watch));
            }
        }
    }

    private void changed(Box old, Optional<Box> now, BoxWatch watch) {
        boolean stays = now.filter(box -> box.site().equals(old.site())).isPresent();
        boolean expected = stays && now.get().every().isPresent();
        if (expected && !watch.silent()) {
            draft.put(watch.with(patience(now.get()).map(watch.heardAt()::plus)));
        } else if (!expected) {
            Heartbeat said = stays ? watch.last() : Heartbeat.BARE;
            draft.put(new BoxWatch(watch.box(), watch.heardAt(), Optional.empty(), false, said));
            gone(old, watch, stays);
        }
    }

    private void gone(Box old, BoxWatch watch, boolean stays) {
        if (draft.setup().sites().containsKey(old.site())) {
            back(old);
            if (!stays) {
                watch.last().feeds().keySet().forEach(feed -> feed(old, feed));
            }
            reports.finish(old.site());
        }
    }

    private static Optional<Duration> patience(Box box) {
        return box.every().map(every -> every.plus(box.grace()));
    }

    /** Comes back with whether the box was silent. */
    private boolean hear(Box box, Optional<Heartbeat> said) {
        Optional<BoxWatch> before = draft.box(box.id());
        BoxWatch watch = before.orElse(new BoxWatch(box.id(), draft.now(), Optional.empty(), false, Heartbeat.BARE));
        draft.put(watch.heard(draft.now(), patience(box), said.orElse(watch.last())));
        boolean silent = before.filter(BoxWatch::silent).isPresent();
        if (silent) {
            log(
                    box,
                    "box " + box.id() + " is back, silent since " + before.get().heardAt());
            back(box);
        }
        return silent;
    }

    private void back(Box box) {
        boolean others = draft.setup().boxesAt(box.site()).stream()
                .filter(other -> !other.id().equals(box.id()))
                .anyMatch(
                        other -> draft.box(other.id()).filter(BoxWatch::silent).isPresent());
        if (others) {
            return;
        }
        for (Verdict verdict : Verdict.values()) {
            say(box, BoxAlarms.silence(box.site(), verdict), false);
        }
    }

    /** A feed is off as long as any box of the site says so. Comes back with whether that is news. */
    private boolean feed(Box box, String feed) {
        boolean off = draft.setup().boxesAt(box.site()).stream()
                .flatMap(other -> draft.box(other.id()).stream())
                .anyMatch(watch -> Boolean.FALSE.equals(watch.last().feeds().get(feed)));
        return say(box, BoxAlarms.feedOff(box.site(), feed), off);
    }

    /** Says what changes, and nothing else: a heartbeat that only confirms what is known leaves no trace in the log. */
    private boolean say(Box box, AlarmKey key, boolean active) {
        boolean news = draft.alarm(key).reported() != active;
        if (news) {
            reports.report(
                    new Report(
                            key, Optional.of(box.id()), active, Optional.empty(), Measured.NOTHING, draft.now(), false),
                    Priority.HIGH);
        }
        return news;
    }

    private void log(Box box, String words) {
        draft.log(Entry.What.BOX, Map.of("site", box.site(), "box", box.id()), words);
    }
}
