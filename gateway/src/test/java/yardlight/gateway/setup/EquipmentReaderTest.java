package yardlight.gateway.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.Unusual;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.tank.Lying;
import yardlight.escalation.tank.Rectangular;
import yardlight.escalation.tank.Response;
import yardlight.escalation.tank.Strapping;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.tank.Upright;
import yardlight.escalation.trend.FallRules;
import yardlight.gateway.document.Document;
import yardlight.gateway.problem.Problem;

/** Tanks, pumps, leaks and response times in the setup. */
class EquipmentReaderTest {

    private final SetupReader reader =
            new SetupReader(List.of(SmtpChannel.mail(Optional.empty()), SmtpChannel.smsMail(Optional.empty())));

    private static final String SITE = "sites: [{id: mesa-9, zone: America/Chicago, ladder: night%s}]\n"
            + "ladders: [{id: night, rungs: [{call: [everyone], wait: PT5M}]}]\n";

    private Equipment read(String point) {
        return setup("", point).point("mesa-9", "one").equipment();
    }

    private Setup setup(String site, String point) {
        String tank = ", {id: water-tank, site: mesa-9, tank: {shape: upright, diameter: 12, height: 20}}";
        return reader.read(Document.setupYaml(
                SITE.formatted(site) + "points: [{id: one, site: mesa-9" + point + "}" + tank + "]"));
    }

    private List<String> faults(String site, String point) {
        var problem = catchThrowableOfType(Problem.class, () -> setup(site, point));
        return problem.faults().stream()
                .map(fault -> fault.place() + " " + fault.detail())
                .toList();
    }

    @Test
    void a_point_is_a_number_and_nothing_else_unless_somebody_says_so() {
        assertThat(read("")).isEqualTo(Equipment.NONE);
        assertThat(setup("", "").sites().get("mesa-9").response()).isEqualTo(Response.USUAL);
    }

    @Test
    void reads_tanks_of_every_shape() {
        assertThat(tank("{shape: upright, diameter: 15.5, height: 16}").tank()).isEqualTo(new Upright(15.5, 16));
        assertThat(tank("{shape: lying, diameter: 8, length: 20}").tank()).isEqualTo(new Lying(8, 20));
        assertThat(tank("{shape: box, length: 30, width: 8, height: 8}").tank()).isEqualTo(new Rectangular(30, 8, 8));
        assertThat(tank("{strapping: [[1, 20], [10, 185.5]]}").tank())
                .isEqualTo(new Strapping(List.of(new Strapping.Row(1, 20), new Strapping.Row(10, 185.5))));
        assertThat(tank("{shape: upright, diameter: 12, height: 20, gravity: 1.08}")
                        .height(7))
                .isCloseTo(7 / (0.433 * 1.08), within(1e-9));
    }

    private TankRules tank(String tank) {
        return read(", tank: " + tank).tank().orElseThrow();
    }

    @Test
    void reads_a_pump_with_what_it_empties_and_presses_on() {
        assertThat(read(", pump: {}").pump())
                .contains(
                        new PumpRules(0.5, Duration.ofHours(1), Optional.empty(), Optional.empty(), Unusual.USUAL, 14));
        assertThat(read(", pump: {on: 4, hold: P1D, empties: water-tank, pressure: one, least: 0.2, deviations:"
                                + " 6, days: 7}")
                        .pump())
                .contains(new PumpRules(
                        4, Duration.ofDays(1), Optional.of("water-tank"), Optional.of("one"), new Unusual(0.2, 6), 7));
    }

    @Test
    void reads_how_a_fall_is_judged() {
        assertThat(read(", leak: {}").leak()).contains(FallRules.USUAL);
        assertThat(read(", leak: {within: PT5M, factor: 2, least: 0.3, learn: P7D}")
                        .leak())
                .contains(new FallRules(Duration.ofMinutes(5), 2, 0.3, Duration.ofDays(7)));
    }

    @Test
    void reads_how_long_it_takes_to_do_something() {
        Setup setup = setup(", response: {reach: PT10M, drive: PT1H, act: PT5M, margin: 2}", "");

        assertThat(setup.sites().get("mesa-9").response())
                .isEqualTo(new Response(Duration.ofMinutes(10), Duration.ofHours(1), Duration.ofMinutes(5), 2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tank: {shape: round, diameter: 12, height: 20} | #/points/0/tank/shape must be upright, lying or box:"
                        + " round",
                "tank: {shape: upright, height: 20} | #/points/0/tank/diameter must be there",
                "tank: {shape: upright, diameter: -1, height: 20} | #/points/0/tank/diameter must be above 0: -1.0",
                "tank: {strapping: [[2, 20], [1, 30]]} | #/points/0/tank/strapping strapping must rise from row to"
                        + " row: 1.0",
                "tank: {strapping: [[2]]} | #/points/0/tank/strapping/0 must be two numbers such as [1, 20.5]",
                "pump: {empties: two} | #/points/0/pump/empties empties must be a point of the same site with a tank:"
                        + " two",
                "pump: {empties: one} | #/points/0/pump/empties empties must be a point of the same site with a tank:"
                        + " one",
                "pump: {pressure: two} | #/points/0/pump/pressure pressure must be a point of the same site: two",
                "pump: {days: 3} | #/points/0/pump/days must be a whole number from 5 to 14: 3",
                "leak: {factor: 0.5} | #/points/0/leak/factor factor must be at least 1: 0.5",
                "leak: {fast: 5} | #/points/0/leak/fast is not known here; known are within, factor, least, learn"
            })
    void names_what_is_wrong(String point, String fault) {
        assertThat(faults("", ", " + point)).contains(fault);
    }

    @Test
    void refuses_a_response_with_too_little_margin() {
        assertThat(faults(", response: {margin: 0.5}", ""))
                .containsExactly("#/sites/0/response/margin margin must lie between 1 and 10.0: 0.5");
    }
}
