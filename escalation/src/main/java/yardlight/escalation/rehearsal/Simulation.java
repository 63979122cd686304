package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import yardlight.escalation.Changes;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Picture;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;

/**
 * Walks the engine through time: whatever is due happens at its time and in order, what comes of it included. It orders
 * and delivers, and has no rule of its own.
 */
public final class Simulation {

    private final Picture picture;
    private final Escalator escalator;
    private final TreeSet<Due> schedule = new TreeSet<>();
    private final Map<String, Due> dueOf = new HashMap<>();
    private final List<Consumer<Happening>> watchers = new ArrayList<>();
    private long order;
    private Instant now = Instant.MIN;

    public Simulation(Setup setup, Escalator escalator) {
        this.picture = new Picture(setup);
        this.escalator = escalator;
    }

    /** Lets somebody see every step as it happens; who reacts does so by {@link #at}. */
    public void watch(Consumer<Happening> watcher) {
        watchers.add(watcher);
    }

    /** Schedules what comes from outside; a time that has passed counts as now. */
    public void at(Instant when, Stimulus stimulus) {
        schedule.add(new Due(when.isBefore(now) ? now : when, order++, stimulus));
    }

    /** Runs until nothing is due up to and including the instant. */
    public void run(Instant until) {
        while (!schedule.isEmpty() && !schedule.first().at().isAfter(until)) {
            Due due = schedule.pollFirst();
            now = due.at();
            step(due.stimulus());
        }
        now = until;
    }

    /** The time of the next thing that will happen by itself. */
    public Optional<Instant> next() {
        return schedule.isEmpty()
                ? Optional.empty()
                : Optional.of(schedule.first().at());
    }

    public Picture picture() {
        return picture;
    }

    public Instant now() {
        return now;
    }

    private void step(Stimulus stimulus) {
        Decision decision = escalator.decide(picture, stimulus, now);
        if (stimulus instanceof Stimulus.SetupChanged changed) {
            picture.setup(changed.setup());
        }
        Changes changes = decision.changes();
        picture.apply(changes);
        changes.alarms().forEach(alarm -> {
            var timing = picture.setup()
                    .point(alarm.key().site(), alarm.key().point())
                    .timing();
            due("alarm " + alarm.key(), alarm.dueAt(timing), new Stimulus.AlarmDue(alarm.key()));
        });
        changes.callouts()
                .forEach(callout ->
                        due("callout " + callout.id(), callout.dueAt(), new Stimulus.CalloutDue(callout.id())));
        changes.desks()
                .forEach(desk -> due("desk " + desk.contact(), desk.dueAt(), new Stimulus.DeskDue(desk.contact())));
        changes.desks()
                .forEach(desk -> due(
                        "all's-well " + desk.contact(),
                        desk.allsWell().map(Desk.AllsWellAt::at),
                        new Stimulus.AllsWellDue(desk.contact())));
        changes.notices()
                .forEach(notice -> due("notice " + notice.id(), notice.dueAt(), new Stimulus.NoticeDue(notice.id())));
        changes.standings()
                .forEach(one -> due(
                        "shut-in " + one.site(), one.dueAt(), new Stimulus.ShutIn(one.site(), new ShutInSaid.Due())));
        changes.boxes().forEach(box -> due("box " + box.box(), box.deadline(), new Stimulus.BoxDue(box.box())));
        changes.gauges()
                .forEach(gauge -> due("gauge " + gauge.key(), gauge.deadline(), new Stimulus.GaugeDue(gauge.key())));
        var happening = new Happening(now, stimulus, decision);
        watchers.forEach(watcher -> watcher.accept(happening));
    }

    private void due(String what, Optional<Instant> at, Stimulus stimulus) {
        Due before = dueOf.remove(what);
        if (before != null) {
            schedule.remove(before);
        }
        at.ifPresent(time -> {
            var due = new Due(time.isBefore(now) ? now : time, order++, stimulus);
            schedule.add(due);
            dueOf.put(what, due);
        });
    }
}
