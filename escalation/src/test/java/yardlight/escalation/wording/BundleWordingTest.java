package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.setup.Language.EN;
import static yardlight.escalation.setup.Language.ES;
import static yardlight.escalation.wording.Made.code;
import static yardlight.escalation.wording.Made.link;
import static yardlight.escalation.wording.Made.subject;
import static yardlight.escalation.wording.Made.tank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;

/** The text about several alarms, to the letter. */
class BundleWordingTest {

    private static final Subject TANK = subject("Mesa 9", "WATER TANK", "high-high");
    private static final Subject SEPARATOR = subject("Mesa 9", "SEPARATOR", "high");
    private static final Subject PUMP = subject("Loma 4", "PUMP", "off");

    @Test
    void of_one_site_names_it_once_and_then_the_worst() {
        List<Subject> two = List.of(TANK, SEPARATOR);

        assertThat(Wording.text(two, code(47), EN))
                .isEqualTo(
                        "MESA 9: 2 alarms, worst WATER TANK HIGH-HIGH 2:13 AM, then SEPARATOR HIGH 2:13 AM. Reply OK 47");
        assertThat(Wording.text(two, code(47), ES))
                .isEqualTo("MESA 9: 2 alarmas, la peor WATER TANK ALTO-ALTO 2:13 AM, luego SEPARATOR ALTO 2:13 AM."
                        + " Responda OK 47");
    }

    @Test
    void of_several_sites_names_each() {
        List<Subject> three = List.of(TANK, PUMP, SEPARATOR);

        assertThat(Wording.text(three, Made.all(), EN))
                .isEqualTo("3 alarms at 2 sites. MESA 9 WATER TANK HIGH-HIGH 2:13 AM; LOMA 4 PUMP OFF 2:13 AM;"
                        + " MESA 9 SEPARATOR HIGH 2:13 AM. Reply ALL");
        assertThat(Wording.text(three, Made.all(), ES))
                .isEqualTo("3 alarmas en 2 sitios. MESA 9 WATER TANK ALTO-ALTO 2:13 AM; LOMA 4 PUMP APAGADO 2:13 AM;"
                        + " MESA 9 SEPARATOR ALTO 2:13 AM. Responda ALL");
    }

    @Test
    void of_a_flood_has_the_count_and_as_many_of_the_worst_as_fit() {
        var flood = new ArrayList<>(List.of(TANK));
        flood.addAll(Collections.nCopies(57, SEPARATOR));

        assertThat(Wording.text(flood, code(47), EN))
                .isEqualTo("MESA 9: 58 alarms, worst WATER TANK HIGH-HIGH 2:13 AM, then SEPARATOR HIGH 2:13 AM,"
                        + " SEPARATOR HIGH 2:13 AM, SEPARATOR HIGH 2:13 AM. Reply OK 47")
                .hasSizeBetween(160 - ", SEPARATOR HIGH 2:13 AM".length() + 1, 160);
    }

    @Test
    void does_not_pass_over_an_alarm_for_a_shorter_one() {
        Subject longer = subject("Mesa 9", "W".repeat(29), "x".repeat(64));

        assertThat(Wording.text(List.of(TANK, longer, SEPARATOR), code(47), EN))
                .isEqualTo("MESA 9: 3 alarms, worst WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void puts_the_link_before_the_second_alarm() {
        String link = "http://" + "h".repeat(80);

        assertThat(Wording.text(List.of(TANK, SEPARATOR), link(47, link), EN))
                .isEqualTo("MESA 9: 2 alarms, worst WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47 or " + link);
        assertThat(Wording.text(List.of(TANK, SEPARATOR), link(47, link + "h".repeat(40)), EN))
                .endsWith(", then SEPARATOR HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void says_which_of_them_are_over() {
        Subject over = tank(alarm -> alarm.state(AlarmState.RETURNED_UNACKNOWLEDGED)
                .returnedAt(alarm.done().occurredAt()));

        assertThat(Wording.text(List.of(over, SEPARATOR), code(47), EN))
                .isEqualTo("MESA 9: 2 alarms, worst WATER TANK HIGH-HIGH 2:13 AM returned 2:13 AM,"
                        + " then SEPARATOR HIGH 2:13 AM. Reply OK 47");
        assertThat(Wording.text(List.of(SEPARATOR, over), code(47), EN))
                .endsWith(", then WATER TANK HIGH-HIGH 2:13 AM returned 2:13 AM. Reply OK 47");
    }

    @Test
    void shortens_the_names_of_the_worst_rather_than_leave_it_out() {
        Subject worst = subject("S".repeat(100), "P".repeat(100), "x".repeat(64));

        assertThat(Wording.text(List.of(worst, worst), code(Integer.MAX_VALUE), ES))
                .matches("S{20,} ?: 2 alarmas, la peor P{20,} X{64} 2:13 AM. Responda OK 2147483647")
                .hasSize(160);
        assertThat(Wording.text(List.of(worst, PUMP), code(Integer.MAX_VALUE), ES))
                .matches("2 alarmas en 2 sitios. S{18,} P{18,} X{64} 2:13 AM. Responda OK 2147483647")
                .hasSize(160);
    }

    @Test
    void gives_the_worst_its_long_names_when_nothing_else_wants_the_room() {
        Subject worst = subject("Mesa 9", "Water tank beside the second separator behind it", "high-high");

        assertThat(Wording.text(List.of(worst, SEPARATOR), code(47), EN))
                .isEqualTo("MESA 9: 2 alarms, worst WATER TANK BESIDE THE SECOND SEPARATOR BEHIND IT HIGH-HIGH 2:13 AM,"
                        + " then SEPARATOR HIGH 2:13 AM. Reply OK 47");
    }
}
