package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Awaited;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.rehearsal.Happening;

/** What must hold of receipts on every night. */
final class ReceiptPromises {

    private static final Duration LEAST = Duration.ofSeconds(10);

    private final RandomNight night;
    private final Map<String, Notice> known = new HashMap<>();
    private final Map<String, Callout> callouts = new HashMap<>();

    private ReceiptPromises(RandomNight night) {
        this.night = night;
    }

    static void hold(RandomNight night) {
        var promises = new ReceiptPromises(night);
        night.happenings().forEach(promises::step);
        promises.end();
    }

    private void step(Happening step) {
        Map<String, Callout> before = new HashMap<>(callouts);
        step.decision().changes().callouts().forEach(callout -> callouts.put(callout.id(), callout));
        if (step.stimulus() instanceof Stimulus.NoticeDue due) {
            missed(step, Optional.ofNullable(known.get(due.notice())));
        }
        for (Notice notice : step.decision().changes().notices()) {
            Notice was = known.put(notice.id(), notice);
            boolean arrived = was != null && was.state() == NoticeState.DELIVERED;
            holds(!arrived || notice.state() == NoticeState.DELIVERED, "what has arrived has arrived", notice);
            notice.awaited().ifPresent(word -> bounded(notice, word, before));
        }
    }

    private void missed(Happening step, Optional<Notice> notice) {
        notice.filter(was -> was.dueAt().filter(at -> !at.isAfter(step.at())).isPresent())
                .filter(was -> was.purpose() == Purpose.CALL)
                .filter(was -> was.callouts().stream().map(callouts::get).anyMatch(Callout::live))
                .filter(was -> reachableAfter(was, step))
                .ifPresent(was -> holds(
                        step.decision().changes().notices().stream().anyMatch(now -> follows(was, now, step)),
                        "who gives no receipt is followed by the next line, unless it would wake somebody",
                        was));
    }

    private boolean follows(Notice was, Notice now, Happening step) {
        boolean asleep = PeopleNow.heldUntil(night.setup().contacts().get(was.contact()), was.priority(), step.at())
                .isPresent();
        boolean goesOn = now.state() == NoticeState.QUEUED && now.line() > was.line();
        return now.id().equals(was.id()) && (asleep ? now.state() == NoticeState.HELD : goesOn);
    }

    private boolean reachableAfter(Notice was, Happening step) {
        return night.setup()
                .line(was.contact(), was.line() + 1)
                .filter(line -> !night.hadStops() && !night.down(step).contains(line.channel()))
                .isPresent();
    }

    /** Another line has at least as long as this one had until the next rung, or until that is due anyway. */
    private static void bounded(Notice notice, Awaited word, Map<String, Callout> callouts) {
        for (String id : notice.callouts()) {
            Optional<Instant> rung = callouts.get(id).dueAt();
            Duration waits = Duration.between(word.since(), word.until());
            holds(
                    rung.isEmpty()
                            || waits.compareTo(LEAST) <= 0
                            || !word.until().plus(waits).isAfter(rung.get()),
                    "a receipt is not waited for past the middle of the rung",
                    notice);
        }
    }

    private void end() {
        Instant now = night.simulation().now();
        for (Notice notice : night.simulation().picture().notices()) {
            holds(
                    notice.dueAt().filter(at -> !at.isAfter(now)).isEmpty(),
                    "a receipt is waited for and no longer",
                    notice);
        }
    }

    private static void holds(boolean promise, String name, Object what) {
        if (!promise) {
            throw new AssertionError(name + ": " + what);
        }
    }
}
