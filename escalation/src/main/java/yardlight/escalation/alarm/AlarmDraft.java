package yardlight.escalation.alarm;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An {@link Alarm} while it is being changed or read back from storage. Each setter is named like the component that
 * it sets; {@link #done()} gives the new value.
 */
public final class AlarmDraft {

    final AlarmKey key;
    int occurrence;
    AlarmState state = AlarmState.NORMAL;
    Optional<String> box = Optional.empty();
    Priority priority = Priority.MEDIUM;
    Measured measured = Measured.NOTHING;
    boolean active;
    boolean seen = true;
    boolean latched;
    int repeats;
    Optional<Instant> occurredAt = Optional.empty();
    Optional<Instant> receivedAt = Optional.empty();
    Optional<Instant> acknowledgedAt = Optional.empty();
    Optional<String> acknowledgedBy = Optional.empty();
    Optional<Instant> returnedAt = Optional.empty();
    Optional<Instant> shelvedUntil = Optional.empty();
    Optional<Instant> pendingSince = Optional.empty();
    Optional<Instant> clearingSince = Optional.empty();
    Optional<Instant> declaredAt = Optional.empty();
    Optional<Instant> realarmAt = Optional.empty();
    List<Instant> activations = new ArrayList<>();
    Optional<String> callout = Optional.empty();
    Optional<String> reading = Optional.empty();

    public AlarmDraft(AlarmKey key) {
        this.key = key;
    }

    AlarmDraft(Alarm from) {
        key = from.key();
        occurrence = from.occurrence();
        state = from.state();
        box = from.box();
        priority = from.priority();
        measured = from.measured();
        active = from.active();
        seen = from.seen();
        latched = from.latched();
        repeats = from.repeats();
        occurredAt = from.occurredAt();
        receivedAt = from.receivedAt();
        acknowledgedAt = from.acknowledgedAt();
        acknowledgedBy = from.acknowledgedBy();
        returnedAt = from.returnedAt();
        shelvedUntil = from.shelvedUntil();
        pendingSince = from.pendingSince();
        clearingSince = from.clearingSince();
        declaredAt = from.declaredAt();
        realarmAt = from.realarmAt();
        activations = new ArrayList<>(from.activations());
        callout = from.callout();
        reading = from.reading();
    }

    public Alarm done() {
        return new Alarm(
                key,
                occurrence,
                state,
                box,
                priority,
                measured,
                active,
                seen,
                latched,
                repeats,
                occurredAt,
                receivedAt,
                acknowledgedAt,
                acknowledgedBy,
                returnedAt,
                shelvedUntil,
                pendingSince,
                clearingSince,
                declaredAt,
                realarmAt,
                activations,
                callout,
                reading);
    }

    /** Whatever was answered before, this is not: who asks sees no answer either. */
    AlarmDraft unanswered() {
        seen = false;
        acknowledgedAt = Optional.empty();
        acknowledgedBy = Optional.empty();
        return this;
    }

    public AlarmDraft occurrence(int value) {
        occurrence = value;
        return this;
    }

    public AlarmDraft state(AlarmState value) {
        state = value;
        return this;
    }

    public AlarmDraft box(Optional<String> value) {
        box = value;
        return this;
    }

    public AlarmDraft priority(Priority value) {
        priority = value;
        return this;
    }

    public AlarmDraft measured(Measured value) {
        measured = value;
        return this;
    }

    public AlarmDraft active(boolean value) {
        active = value;
        return this;
    }

    public AlarmDraft seen(boolean value) {
        seen = value;
        return this;
    }

    public AlarmDraft latched(boolean value) {
        latched = value;
        return this;
    }

    public AlarmDraft repeats(int value) {
        repeats = value;
        return this;
    }

    public AlarmDraft occurredAt(Optional<Instant> value) {
        occurredAt = value;
        return this;
    }

    public AlarmDraft receivedAt(Optional<Instant> value) {
        receivedAt = value;
        return this;
    }

    public AlarmDraft acknowledgedAt(Optional<Instant> value) {
        acknowledgedAt = value;
        return this;
    }

    public AlarmDraft acknowledgedBy(Optional<String> value) {
        acknowledgedBy = value;
        return this;
    }

    public AlarmDraft returnedAt(Optional<Instant> value) {
        returnedAt = value;
        return this;
    }

    public AlarmDraft shelvedUntil(Optional<Instant> value) {
        shelvedUntil = value;
        return this;
    }

    public AlarmDraft pendingSince(Optional<Instant> value) {
        pendingSince = value;
        return this;
    }

    public AlarmDraft clearingSince(Optional<Instant> value) {
        clearingSince = value;
        return this;
    }

    public AlarmDraft declaredAt(Optional<Instant> value) {
        declaredAt = value;
        return this;
    }

    public AlarmDraft realarmAt(Optional<Instant> value) {
        realarmAt = value;
        return this;
    }

    public AlarmDraft activations(List<Instant> value) {
        activations = new ArrayList<>(value);
        return this;
    }

    public AlarmDraft callout(Optional<String> value) {
        callout = value;
        return this;
    }

    public AlarmDraft reading(Optional<String> value) {
        reading = value;
        return this;
    }
}
