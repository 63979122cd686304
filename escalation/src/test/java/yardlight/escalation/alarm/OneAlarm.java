package yardlight.escalation.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmRules.Step;

/** One alarm walked through a night, in seconds from its start. Priority medium unless a report says otherwise. */
final class OneAlarm {

    private static final Instant START = Fixtures.at("2026-11-25T02:00");

    private Alarm alarm = Alarm.normal(Fixtures.TANK);
    private Timing timing;

    OneAlarm(Timing timing) {
        this.timing = timing;
    }

    static Timing onDelay(long seconds) {
        return new Timing(Duration.ofSeconds(seconds), Duration.ZERO, false, Optional.empty(), Nuisance.Numbers.USUAL);
    }

    static Timing offDelay(long seconds) {
        return new Timing(Duration.ZERO, Duration.ofSeconds(seconds), false, Optional.empty(), Nuisance.Numbers.USUAL);
    }

    static Timing latching() {
        return new Timing(Duration.ZERO, Duration.ZERO, true, Optional.empty(), Nuisance.Numbers.USUAL);
    }

    static Timing realarm(long seconds) {
        return new Timing(
                Duration.ZERO, Duration.ZERO, false, Optional.of(Duration.ofSeconds(seconds)), Nuisance.Numbers.USUAL);
    }

    static Instant second(long second) {
        return START.plusSeconds(second);
    }

    Step active(long second) {
        return arrives(Fixtures.active(Fixtures.TANK, second(second)), second);
    }

    Step active(long second, Priority priority) {
        Report plain = Fixtures.active(Fixtures.TANK, second(second));
        return arrives(
                new Report(plain.key(), plain.box(), true, Optional.of(priority), plain.measured(), plain.at(), false),
                second);
    }

    Step normal(long second) {
        return arrives(Fixtures.normal(Fixtures.TANK, second(second)), second);
    }

    /** A report that carries the box's own time and arrives later. */
    Step declared(boolean active, long happened, long arrived) {
        return declaredBy("mesa-9-box", active, happened, arrived);
    }

    Step declaredBy(String box, boolean active, long happened, long arrived) {
        return arrives(
                new Report(
                        Fixtures.TANK,
                        Optional.of(box),
                        active,
                        Optional.empty(),
                        Measured.NOTHING,
                        second(happened),
                        true),
                arrived);
    }

    Step arrives(Report report, long second) {
        Step step = AlarmRules.report(alarm, report, timing, Priority.MEDIUM, second(second));
        alarm = step.alarm();
        return step;
    }

    Step due(long second) {
        Step step = AlarmRules.due(alarm, timing, second(second));
        alarm = step.alarm();
        return step;
    }

    Optional<Step> acknowledge(long second) {
        return take(AlarmRules.acknowledge(alarm, "ana", timing, second(second)));
    }

    Optional<Step> shelve(long until) {
        return take(AlarmRules.shelve(alarm, second(until), timing));
    }

    Optional<Step> move(AlarmTrigger trigger) {
        return take(AlarmRules.move(alarm, trigger, timing));
    }

    void called(String callout) {
        alarm = alarm.draft().callout(Optional.of(callout)).done();
    }

    void timing(Timing other) {
        timing = other;
    }

    Alarm alarm() {
        return alarm;
    }

    AlarmState state() {
        return alarm.state();
    }

    Optional<Instant> dueAt() {
        return alarm.dueAt(timing);
    }

    private Optional<Step> take(Optional<Step> step) {
        step.ifPresent(taken -> alarm = taken.alarm());
        return step;
    }
}
