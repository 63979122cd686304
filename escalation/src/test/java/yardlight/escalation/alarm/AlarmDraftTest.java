package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class AlarmDraftTest {

    /** No component at its default, so that a setter that is missing or sets another component shows. */
    private static final Alarm FULL = Fixtures.anAlarm()
            .draft()
            .occurrence(3)
            .state(AlarmState.SHELVED)
            .latched(true)
            .repeats(7)
            .receivedAt(Optional.of(OneAlarm.second(1)))
            .acknowledgedAt(Optional.of(OneAlarm.second(2)))
            .acknowledgedBy(Optional.of("ana"))
            .returnedAt(Optional.of(OneAlarm.second(3)))
            .shelvedUntil(Optional.of(OneAlarm.second(4)))
            .pendingSince(Optional.of(OneAlarm.second(5)))
            .clearingSince(Optional.of(OneAlarm.second(6)))
            .declaredAt(Optional.of(OneAlarm.second(7)))
            .realarmAt(Optional.of(OneAlarm.second(8)))
            .activations(List.of(OneAlarm.second(9)))
            .callout(Optional.of("c1"))
            .reading(Optional.of("power-off"))
            .done();

    @Test
    void has_a_setter_for_every_component_by_its_name() throws ReflectiveOperationException {
        var draft = new AlarmDraft(FULL.key());

        for (RecordComponent component : Alarm.class.getRecordComponents()) {
            if (!component.getName().equals("key")) {
                Object value = component.getAccessor().invoke(FULL);
                AlarmDraft.class
                        .getDeclaredMethod(component.getName(), component.getType())
                        .invoke(draft, value);
                assertThat(component.getAccessor().invoke(draft.done()))
                        .as(component.getName())
                        .isEqualTo(value)
                        .isNotEqualTo(component.getAccessor().invoke(Alarm.normal(FULL.key())));
            }
        }

        assertThat(draft.done()).isEqualTo(FULL);
    }

    @Test
    void begins_with_the_alarm_that_it_changes() {
        assertThat(FULL.draft().done()).isEqualTo(FULL);
    }

    @Test
    void leaves_the_alarm_that_it_came_from_alone() {
        AlarmDraft draft = FULL.draft();

        draft.repeats(8).activations.clear();

        assertThat(FULL.repeats()).isEqualTo(7);
        assertThat(FULL.activations()).hasSize(1);
    }
}
