package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmTrigger.UNSHELVE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** OPC UA Part 9, whose alarm states are those of ISA-18.2 in an open standard. */
class AlarmStatesAgainstTest {

    /** One row of the table: is the condition active, was it acknowledged, is there still anything to show. */
    private record Row(boolean active, boolean acked, boolean retain) {}

    private final OneAlarm alarm = new OneAlarm(Timing.PLAIN);

    /**
     * Annex B.1.2, Table B.1, read: columns Active and Acked as printed. There is no confirm step here, so its rows 4
     * and 8 fall away and Retain, which waits for it there, is false in rows 3 and 7 (derived).
     */
    @Test
    void the_published_sequence_of_states_is_replayed_row_by_row() {
        var rows = new ArrayList<Row>();

        rows.add(row()); // 0 initial
        alarm.active(100);
        rows.add(row()); // 1 goes active
        alarm.acknowledge(200);
        rows.add(row()); // 2 acknowledged
        alarm.normal(300);
        rows.add(row()); // 3 goes inactive
        alarm.active(400);
        rows.add(row()); // 5 goes active
        alarm.normal(500);
        rows.add(row()); // 6 goes inactive
        alarm.acknowledge(600);
        rows.add(row()); // 7 acknowledged

        assertThat(rows)
                .isEqualTo(List.of(
                        new Row(false, true, false),
                        new Row(true, false, true),
                        new Row(true, true, true),
                        new Row(false, true, false),
                        new Row(true, false, true),
                        new Row(false, false, true),
                        new Row(false, true, false)));
    }

    /** Two yes/no facts make the four plain states: ISA-18.2 and IEC 62682, read (2nd). */
    @Test
    void the_two_facts_name_the_state() {
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
        alarm.active(100);
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        alarm.acknowledge(200);
        assertThat(alarm.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        alarm.normal(300);
        alarm.active(400);
        alarm.normal(500);
        assertThat(alarm.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
    }

    /** 5.8.17, read: a timed shelf ends at its time whatever the alarm does meanwhile. */
    @Test
    void a_timed_shelf_ends_at_its_time_whatever_the_alarm_does_meanwhile() {
        alarm.shelve(1000);
        alarm.active(100);
        alarm.normal(200);
        alarm.active(300);
        alarm.due(999);
        assertThat(alarm.state()).isEqualTo(AlarmState.SHELVED);

        alarm.due(1000);

        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    /** 5.8.17, read: shelving what is shelved is an error; taking it off the shelf is possible at any time. */
    @Test
    void shelving_twice_is_an_error_and_unshelving_never_is() {
        alarm.shelve(1000);

        assertThat(alarm.shelve(2000)).isEmpty();
        assertThat(alarm.move(UNSHELVE)).isPresent();
    }

    /** 4.8, read: a shelved alarm stays fully functional, unlike a disabled one. */
    @Test
    void a_shelved_alarm_goes_on_following_its_condition() {
        alarm.shelve(1000);
        alarm.active(100);

        assertThat(alarm.alarm().active()).isTrue();
        assertThat(alarm.alarm().activations()).hasSize(1);
    }

    private Row row() {
        Alarm now = alarm.alarm();
        return new Row(now.active(), now.seen(), now.live());
    }
}
