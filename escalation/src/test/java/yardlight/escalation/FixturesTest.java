package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.setup.Point;

class FixturesTest {

    @Test
    void name_the_same_operator_everywhere() {
        var setup = Fixtures.theSetup();

        assertThat(setup.known(Fixtures.TANK.site(), Fixtures.TANK.point())).isPresent();
        assertThat(setup.known(Fixtures.PUMP.site(), Fixtures.PUMP.point())).isPresent();
        assertThat(setup.ladders()).containsKey(Fixtures.aSite().ladder());
        assertThat(setup.sites()).containsOnlyKeys("mesa-9");
        assertThat(setup.boxes()).containsOnlyKeys("mesa-9-box");
        assertThat(setup.points()).extracting(Point::id).containsExactly("water-tank", "injection-pump");
        assertThat(setup.rosters()).containsOnlyKeys("crew");
        assertThat(setup.contacts()).containsOnlyKeys("ana", "ben");
        assertThat(Fixtures.anAlarm().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(Fixtures.anAlarm().id()).isEqualTo("mesa-9.water-tank.high-high.1");
    }
}
