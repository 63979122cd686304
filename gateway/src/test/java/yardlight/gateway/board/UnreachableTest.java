package yardlight.gateway.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.page.Tongues;

class UnreachableTest {

    private static final String TEXT = "5755550101@txt.example";

    @Test
    void names_who_has_stopped_every_line() {
        assertThat(Unreachable.of(Fixtures.theSetup(), stopped(true, TEXT, "ana@mesa.example"), Tongues.ENGLISH))
                .containsExactly("Ana Ruelas: wants nothing more by any line, and is not called");
    }

    @Test
    void does_not_name_who_has_a_line_left_or_has_taken_one_up_again() {
        assertThat(Unreachable.of(Fixtures.theSetup(), stopped(true, TEXT), Tongues.ENGLISH))
                .isEmpty();
        assertThat(Unreachable.of(Fixtures.theSetup(), stopped(false, TEXT, "ana@mesa.example"), Tongues.ENGLISH))
                .isEmpty();
    }

    private static List<RecordedAlarm> stopped(boolean active, String... addresses) {
        return Stream.of(addresses)
                .map(address -> Alarm.normal(Stop.key("ana", address))
                        .draft()
                        .occurrence(1)
                        .active(active)
                        .state(active ? AlarmState.ACKNOWLEDGED : AlarmState.RETURNED_UNACKNOWLEDGED)
                        .done())
                .map(alarm -> new RecordedAlarm(alarm, Optional.empty()))
                .toList();
    }
}
