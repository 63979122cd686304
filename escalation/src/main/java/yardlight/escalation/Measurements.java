package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.limit.Conditions;
import yardlight.escalation.limit.Finding;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;

/** What boxes measure, and what is found in it: from there on it is as if the box had reported it. */
final class Measurements {

    private final Draft draft;
    private final Calls calls;
    private final Reports reports;

    Measurements(Draft draft, Calls calls) {
        this.draft = draft;
        this.calls = calls;
        this.reports = new Reports(draft, calls);
    }

    /** A box's readings. Whatever they say, they are a sign of life too. */
    Answer take(Stimulus.Measured posted) {
        Box box = draft.setup().boxes().get(posted.box());
        if (box == null) {
            return new Answer.Refusal("box must be set up: " + posted.box());
        }
        new Silence(draft, calls).heard(box);
        var found = new ArrayList<Found>();
        posted.readings().stream().sorted(Comparator.comparing(Reading::at)).forEach(reading -> {
            Point point = draft.setup().point(reading.site(), reading.point());
            if (point.gauged()) {
                Gauge before = draft.gauge(new Gauge.Key(reading.site(), reading.point()));
                put(Watching.take(before, point.rules(), box.id(), reading, draft.now()), found);
                new Equipments(draft).look(point, reading, step -> put(step, found));
            }
        });
        tell(found, box.site());
        posted.readings().stream()
                .map(reading -> draft.setup().point(reading.site(), reading.point()))
                .distinct()
                .forEach(this::lastCall);
        return new Answer.Done();
    }

    /** People were called about this tank; once too little time is left even for them, the site itself is asked. */
    private void lastCall(Point point) {
        boolean called = point.equipment().tank().isPresent()
                && draft.gauge(new Gauge.Key(point.site(), point.id())).holds(Tanks.OVERFLOW);
        if (called) {
            new Tanks(draft)
                    .outlook(point, draft.now())
                    .ifPresent(outlook -> new ShutIns(draft, calls.notices())
                            .lastCall(new AlarmKey(point.site(), point.id(), Tanks.OVERFLOW), outlook.least()));
        }
    }

    /**
     * A point was not read in time. While its box says nothing at all the box is the cause, and once it is back the point gets
     * its time anew; the same if it was the gateway that nobody could reach. While it is not known whether the box is silent the point
     * waits for that.
     */
    Answer due(Stimulus.GaugeDue due) {
        Gauge gauge = draft.gauge(due.key());
        boolean late = gauge.deadline()
                .filter(deadline -> !deadline.isAfter(draft.now()))
                .isPresent();
        Optional<Duration> patience =
                draft.setup().point(due.key().site(), due.key().point()).rules().missing();
        boolean here = draft.setup().site(due.key().site()).isPresent();
        if (late && (patience.isEmpty() || !here)) {
            draft.put(Watching.unexpected(gauge));
        } else if (late) {
            Instant anew = due.open().plus(patience.get());
            boolean once = gauge.heardAt().map(at -> at.plus(patience.get())).equals(gauge.deadline());
            var unread = new Unread(draft);
            boolean quiet = unread.boxIsQuiet(gauge);
            Instant later = draft.now().plus(patience.get());
            Optional<Instant> known = unread.boxIsKnown(gauge, patience.get());
            if (once && draft.now().isBefore(anew)) {
                draft.put(Watching.postponed(gauge, anew, gauge.excused()));
            } else if (quiet || gauge.excused()) {
                draft.put(Watching.postponed(gauge, later, quiet));
            } else if (known.isPresent()) {
                Instant until = known.filter(later::isAfter).orElse(later);
                draft.put(Watching.postponed(gauge, until, false));
            } else {
                var found = new ArrayList<Found>();
                put(Watching.missing(gauge, draft.now()), found);
                tell(found, due.key().site());
            }
        }
        return new Answer.Done();
    }

    /**
     * Another setup: what nobody asks for any more is over, at a site that is gone too, so that nobody is called for it once the
     * site is back; and limits hold at once.
     */
    void setup(Setup before) {
        for (Point old : before.points()) {
            Point now = draft.setup().point(old.site(), old.id());
            Gauge gauge = draft.gauge(new Gauge.Key(old.site(), old.id()));
            boolean changed =
                    !old.rules().equals(now.rules()) || !old.equipment().equals(now.equipment());
            if (changed && gauge.readAt().isPresent()) {
                var found = new ArrayList<Found>();
                put(Watching.changed(gauge, old.rules(), now.rules(), draft.now()), found);
                put(new Equipments(draft).changed(now), found);
                tell(found, old.site());
            }
        }
        draft.setup().points().stream()
                .filter(point -> before.known(point.site(), point.id()).isEmpty())
                .forEach(this::putBack);
    }

    /** Limits judge its next reading, for the last one may be old. That none comes has to be found without one. */
    private void putBack(Point point) {
        point.rules().missing().ifPresent(patience -> {
            Gauge gauge = draft.gauge(new Gauge.Key(point.site(), point.id()));
            if (gauge.readAt().isPresent()) {
                draft.put(Watching.postponed(gauge, draft.now().plus(patience), false));
            }
        });
    }

    private record Found(Gauge gauge, Finding finding) {

        AlarmKey key() {
            return new AlarmKey(gauge.key().site(), gauge.key().point(), finding.condition());
        }

        Measured measured(Setup setup) {
            Optional<String> unit = finding.value().isEmpty()
                    ? Optional.empty()
                    : finding.unit()
                            .or(() -> setup.point(
                                            gauge.key().site(), gauge.key().point())
                                    .unit());
            return new Measured(finding.value(), finding.limit(), unit, finding.text());
        }

        /** A tank that runs over is critical, unless somebody thinks otherwise of the point. */
        private Optional<Priority> priority(Setup setup) {
            boolean said = setup.point(gauge.key().site(), gauge.key().point())
                    .priority()
                    .isPresent();
            return finding.condition().equals(Tanks.OVERFLOW) && !said
                    ? Optional.of(Priority.CRITICAL)
                    : Optional.empty();
        }

        /** Readings that are missing and come again are a matter of the gateway's own clock. */
        Report report(Setup setup, Instant now) {
            boolean missing = finding.condition().equals(Conditions.MISSING);
            return new Report(
                    key(),
                    missing ? Optional.empty() : gauge.box(),
                    finding.holds(),
                    priority(setup),
                    measured(setup),
                    missing ? now : finding.at(),
                    false);
        }
    }

    private void put(Watching.Step step, List<Found> found) {
        draft.put(step.gauge());
        step.findings().forEach(finding -> found.add(new Found(step.gauge(), finding)));
    }

    /** What turned is reported. What only goes on is no report, but people are told its newest value. */
    private void tell(List<Found> found, String site) {
        List<Report> turned = found.stream()
                .filter(one -> one.finding().turned())
                .map(one -> one.report(draft.setup(), draft.now()))
                .toList();
        reports.findings(turned);
        found.stream().filter(one -> one.finding().holds()).forEach(one -> {
            Alarm alarm = draft.alarm(one.key());
            Measured newest = one.measured(draft.setup());
            if (alarm.active() && !alarm.measured().equals(newest)) {
                draft.put(alarm.draft().measured(newest).done());
            }
        });
        if (!turned.isEmpty()) {
            reports.finish(site);
        }
    }
}
