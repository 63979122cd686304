package yardlight.escalation.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One alarm as it stands: the state of one (site, point, condition), with what happened to its present occurrence.
 * It is changed only through {@link AlarmRules}.
 *
 * @param key identity
 * @param occurrence counts the times that the alarm left {@code normal}; 0 before the first
 * @param box the box that reported last, empty when it was the gateway itself
 * @param active whether the condition holds, delays applied
 * @param seen whether the present activation was acknowledged
 * @param latched whether a latching alarm is over but not reset
 * @param repeats reports of an active condition since the occurrence began, the first one not counted
 * @param occurredAt when the present occurrence began, the site's time where it is known
 * @param receivedAt when the report of it arrived
 * @param shelvedUntil end of the shelf, exclusive
 * @param pendingSince start of a running on-delay
 * @param clearingSince start of a running off-delay
 * @param declaredAt the box's own time in the newest report that had one
 * @param realarmAt when it is called out again although somebody answered, while the condition stays
 * @param activations the newest activations, oldest first, at most {@link Nuisance#KEPT}
 * @param callout id of the newest callout for it
 * @param reading what its condition is taken for by now, where the key says only that something is silent
 */
public record Alarm(
        AlarmKey key,
        int occurrence,
        AlarmState state,
        Optional<String> box,
        Priority priority,
        Measured measured,
        boolean active,
        boolean seen,
        boolean latched,
        int repeats,
        Optional<Instant> occurredAt,
        Optional<Instant> receivedAt,
        Optional<Instant> acknowledgedAt,
        Optional<String> acknowledgedBy,
        Optional<Instant> returnedAt,
        Optional<Instant> shelvedUntil,
        Optional<Instant> pendingSince,
        Optional<Instant> clearingSince,
        Optional<Instant> declaredAt,
        Optional<Instant> realarmAt,
        List<Instant> activations,
        Optional<String> callout,
        Optional<String> reading) {

    public Alarm {
        activations = List.copyOf(activations);
    }

    /** An alarm that has never occurred. */
    public static Alarm normal(AlarmKey key) {
        return new AlarmDraft(key).done();
    }

    /** The id of the present occurrence, {@code mesa-9.water-tank.high-high.3}: made of what it names, so it needs no source of ids. */
    public String id() {
        return key.site() + "." + key.point() + "." + key.condition() + "." + occurrence;
    }

    /** The condition as people are told it. */
    public String condition() {
        return reading.orElse(key.condition());
    }

    /** When something is due although nobody reports: a delay runs out, a shelf ends, the alarm is called again. */
    public Optional<Instant> dueAt(Timing timing) {
        Duration hold = Nuisance.chattering(activations, timing.nuisance())
                ? timing.nuisance().settle()
                : Duration.ZERO;
        Duration offDelay = timing.offDelay().compareTo(hold) > 0 ? timing.offDelay() : hold;
        return Stream.of(
                        pendingSince.map(since -> since.plus(timing.onDelay())),
                        clearingSince.map(since -> since.plus(offDelay)),
                        shelvedUntil,
                        realarmAt)
                .flatMap(Optional::stream)
                .min(Instant::compareTo);
    }

    /** A copy of this alarm that can be changed. */
    public AlarmDraft draft() {
        return new AlarmDraft(this);
    }

    /** Whether the condition holds by what was reported last, whatever the delays make of it. */
    public boolean reported() {
        return active ? clearingSince.isEmpty() : pendingSince.isPresent();
    }

    /** Whether there is anything to show or to follow. */
    public boolean live() {
        return state != AlarmState.NORMAL || pendingSince.isPresent();
    }
}
