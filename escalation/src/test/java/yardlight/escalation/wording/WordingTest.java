package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static yardlight.escalation.setup.Language.EN;
import static yardlight.escalation.setup.Language.ES;
import static yardlight.escalation.wording.Made.MESA;
import static yardlight.escalation.wording.Made.code;
import static yardlight.escalation.wording.Made.link;
import static yardlight.escalation.wording.Made.measured;
import static yardlight.escalation.wording.Made.point;
import static yardlight.escalation.wording.Made.subject;
import static yardlight.escalation.wording.Made.tank;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** The text about one alarm, to the letter. */
class WordingTest {

    private static String text(Subject subject, Answering answering, Language language) {
        return Wording.text(List.of(subject), answering, language);
    }

    private static String english(Subject subject) {
        return text(subject, code(47), EN);
    }

    @Test
    void says_where_what_how_bad_since_when_and_how_to_answer() {
        Subject subject = tank(alarm -> alarm.measured(measured("18.4", "18.0", "ft")));

        assertThat(text(subject, code(47), EN))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47");
        assertThat(text(subject, code(47), ES))
                .isEqualTo("MESA 9 WATER TANK ALTO-ALTO 18.4 ft (limite 18.0) 2:13 AM. Responda OK 47");
    }

    @Test
    void gives_the_link_as_the_other_way_to_answer() {
        assertThat(text(tank(alarm -> alarm), link(47, "http://host/a/TOKEN"), EN))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47 or http://host/a/TOKEN");
        assertThat(text(tank(alarm -> alarm), link(47, "http://host/a/TOKEN"), ES))
                .isEqualTo("MESA 9 WATER TANK ALTO-ALTO 2:13 AM. Responda OK 47 o http://host/a/TOKEN");
    }

    @Test
    void asks_for_all_when_there_is_no_code() {
        assertThat(text(tank(alarm -> alarm), Made.all(), EN)).endsWith(" 2:13 AM. Reply ALL");
        assertThat(text(tank(alarm -> alarm), Made.all(), ES)).endsWith(" 2:13 AM. Responda ALL");
    }

    @ParameterizedTest
    @CsvSource({
        "18.4, , ft, 18.4 ft",
        ", 18.0, ft, (limit 18.0 ft)",
        "18.0, 18.00, , 18.0 ft (limit 18.00)",
        "85, 80, %, 85% (limit 80)",
        "150, , °F, 150 F",
        "3, , m³, 3 m3",
        "7, , \u6C34, 7",
        ", , ft, ''"
    })
    void says_the_numbers_that_there_are(String value, String limit, String unit, String said) {
        Subject subject = tank(alarm -> alarm.measured(measured(value, limit, unit)));

        assertThat(english(subject))
                .isEqualTo(("MESA 9 WATER TANK HIGH-HIGH " + said).strip() + " 2:13 AM. Reply OK 47");
    }

    @ParameterizedTest
    @CsvSource({
        "box, silent, BOX SILENT, CAJA EN SILENCIO",
        "box, comms-loss, BOX COMMS LOST, CAJA SIN COMUNICACION",
        "box, power-off, BOX POWER OFF, CAJA SIN ENERGIA",
        "power-pump, power-off, PUMP POWER OFF, PUMP SIN ENERGIA",
        "power, power-off, POWER OFF, SIN ENERGIA",
        "powerhouse, power-off, POWERHOUSE POWER OFF, POWERHOUSE SIN ENERGIA",
        "power-meter, low, POWER METER LOW, POWER METER BAJO",
        "separator, low-low, SEPARATOR LOW-LOW, SEPARATOR BAJO-BAJO",
        "separator, high, SEPARATOR HIGH, SEPARATOR ALTO",
        "injection-pump, off, INJECTION PUMP OFF, INJECTION PUMP APAGADO",
        "injection-pump, on, INJECTION PUMP ON, INJECTION PUMP ENCENDIDO",
        "float, stuck, FLOAT STUCK, FLOAT ATASCADO",
        "motor, fault, MOTOR FAULT, MOTOR FALLA",
        "hatch, missing, HATCH MISSING, HATCH FALTA",
        "shed, door-open, SHED DOOR-OPEN, SHED PUERTA ABIERTA",
        "separator, rising-fast, SEPARATOR RISING FAST, SEPARATOR SUBE RAPIDO",
        "separator, falling-fast, SEPARATOR FALLING FAST, SEPARATOR BAJA RAPIDO",
        "separator, drift, SEPARATOR DRIFTING, SEPARATOR SE DESVIA",
        "separator, sensor-fault, SEPARATOR SENSOR FAULT, SEPARATOR FALLA DEL SENSOR",
        "belt, slips-2x, BELT SLIPS-2X, BELT SLIPS-2X"
    })
    void has_words_for_what_goes_wrong(String point, String condition, String english, String spanish) {
        Subject subject =
                subject(MESA, Point.unknown(point, "mesa-9"), condition, alarm -> alarm.box(Optional.of("mesa-9-box")));

        assertThat(english(subject)).isEqualTo("MESA 9 " + english + " 2:13 AM. Reply OK 47");
        assertThat(text(subject, code(47), ES)).isEqualTo("MESA 9 " + spanish + " 2:13 AM. Responda OK 47");
    }

    @Test
    void what_the_gateway_itself_misses_is_a_reading() {
        Subject subject = subject(MESA, Point.unknown("separator", "mesa-9"), "missing", alarm -> alarm);

        assertThat(english(subject)).isEqualTo("MESA 9 SEPARATOR NO READINGS 2:13 AM. Reply OK 47");
        assertThat(text(subject, code(47), ES)).isEqualTo("MESA 9 SEPARATOR SIN LECTURAS 2:13 AM. Responda OK 47");
    }

    @Test
    void a_drift_is_told_with_where_the_value_should_be() {
        Subject subject = subject(
                MESA,
                Point.unknown("separator", "mesa-9"),
                "drift",
                alarm -> alarm.measured(measured("27.3", "25", "psi")));

        assertThat(english(subject)).isEqualTo("MESA 9 SEPARATOR DRIFTING 27.3 psi (target 25) 2:13 AM. Reply OK 47");
        assertThat(text(subject, code(47), ES))
                .isEqualTo("MESA 9 SEPARATOR SE DESVIA 27.3 psi (objetivo 25) 2:13 AM. Responda OK 47");
    }

    @Test
    void writes_names_in_capitals_of_the_alphabet() {
        Subject subject = subject("Peña Ñandú–3", "Tanque de agua nº2 è 5\u00B5m", "high");

        assertThat(english(subject)).isEqualTo("PEÑA ÑANDU-3 TANQUE DE AGUA NO2 E 5UM HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void takes_the_id_for_a_name_that_the_alphabet_cannot_write() {
        var site = new Site("ozero-7", "Озеро 7", ZoneId.of("America/Chicago"), "night");
        Subject foreign = subject(site, point("\u6C34\u7BB1"), "high", alarm -> alarm);
        Subject nameless = subject(site, point(" \uD83D\uDCA1 --"), "high", alarm -> alarm);

        assertThat(english(foreign)).isEqualTo("OZERO 7 SOME POINT HIGH 2:13 AM. Reply OK 47");
        assertThat(english(nameless)).isEqualTo("OZERO 7 SOME POINT HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void keeps_the_zero_and_caps_an_absurd_number() {
        assertThat(english(tank(alarm -> alarm.measured(measured("1E+400", "18.0", null)))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 1E+400 ft (limit 18.0) 2:13 AM. Reply OK 47");
    }

    @Test
    void refuses_to_write_about_nothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> Wording.text(List.of(), code(47), EN));
    }
}
