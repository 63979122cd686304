package yardlight.gateway.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.limit.Change;
import yardlight.escalation.limit.Current;
import yardlight.escalation.limit.Drift;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Format;
import yardlight.gateway.problem.Problem;

class RulesReaderTest {

    private static final String PEOPLE = """
        sites: [{id: mesa-9, zone: America/Chicago, ladder: night}]
        contacts: [{id: ana, lines: [{channel: mail, address: ana@mesa.example}]}]
        ladders: [{id: night, rungs: [{call: [ana], wait: PT5M}]}]
        """;

    private final SetupReader reader = new SetupReader(List.of(SmtpChannel.mail(Optional.empty())));

    private static String with(String rules) {
        return PEOPLE + "points: [{id: water-tank, site: mesa-9, " + rules + "}]\n";
    }

    private Rules rules(String document) {
        return reader.read(SetupText.document(document))
                .point("mesa-9", "water-tank")
                .rules();
    }

    @Test
    void everything_that_readings_can_be_held_against() {
        String yaml = with("limits: {highHigh: 18.0, high: 16, low: 2, lowLow: -1, deadband: 0.5},"
                + " change: {rise: 2, fall: 5, within: PT10M}, drift: {target: 25, slack: 0, decision: 4.2},"
                + " stuck: PT6H, missing: PT15M, current: {low: 0, high: 20}");
        var all = new Rules(
                Optional.of(new Limits(number("18.0"), number("16"), number("2"), number("-1"), new BigDecimal("0.5"))),
                Optional.of(new Change(number("2"), number("5"), Duration.ofMinutes(10))),
                Optional.of(new Drift(new BigDecimal("25"), BigDecimal.ZERO, new BigDecimal("4.2"))),
                Optional.of(Duration.ofHours(6)),
                Optional.of(Duration.ofMinutes(15)),
                Optional.of(new Current(BigDecimal.ZERO, new BigDecimal("20"))));

        assertThat(rules(yaml)).isEqualTo(all);
        assertThat(rules(SetupText.as(Format.JSON, yaml))).isEqualTo(all);
        assertThat(rules(SetupText.as(Format.YAML, SetupText.as(Format.JSON, yaml))))
                .isEqualTo(all);
    }

    private static Optional<BigDecimal> number(String written) {
        return Optional.of(new BigDecimal(written));
    }

    @Test
    void nothing_is_needed() {
        assertThat(rules(with("unit: ft"))).isEqualTo(Rules.NONE);
        assertThat(rules(with("limits: {low: 2}")).limits().orElseThrow().deadband())
                .isEqualTo(BigDecimal.ZERO);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "limits: {high: 16, highHigh: 15.5} | limits/highHigh must be above high (16): 15.5",
                "limits: {low: 2, highHigh: 2} | limits/highHigh must be above low (2): 2",
                "limits: {lowLow: 3, low: 2, high: 1} | limits/low must be above lowLow (3): 2",
                "limits: {high: 16, deadband: -0.5} | limits/deadband must be 0 or more: -0.5",
                "limits: {high: tall} | limits/high must be a number of at most 18 digits, 9 of them after the point:"
                        + " tall",
                "limits: {deadband: 1} | limits/highHigh or one of the others must be there: lowLow, low, high,"
                        + " highHigh",
                "limits: {hihi: 1} | limits/hihi is not known here; known are lowLow, low, high, highHigh, deadband",
                "limits: 16 | limits must be an object",
                "change: {rise: 2} | change/within must be there",
                "change: {within: PT10M} | change/fall or one of the others must be there: rise, fall",
                "change: {rise: 0, within: PT10M} | change/rise must be above 0: 0",
                "change: {fall: 1, within: PT1S} | change/within must be from PT10S to PT24H: PT1S",
                "drift: {target: 25, slack: 1} | drift/decision must be there",
                "drift: {target: 25, slack: -1, decision: 4} | drift/slack must be 0 or more: -1",
                "drift: {target: 25, slack: 1, decision: 0} | drift/decision must be above 0: 0",
                "stuck: PT5S | stuck must be from PT1M to PT744H: PT5S",
                "missing: soon | missing must be an ISO 8601 duration such as PT5M: soon",
                "current: {low: 0} | current/high must be there",
                "current: {low: 5, high: 5.0} | current/high must not be the same as low: 5.0"
            })
    void a_wrong_one_is_named_by_field_rule_and_value(String rules, String said) {
        Problem problem = catchThrowableOfType(Problem.class, () -> reader.read(Document.setupYaml(with(rules))));

        assertThat(problem.faults())
                .extracting(fault -> fault.place().replace("#/points/0/", "") + " " + fault.detail())
                .contains(said);
    }
}
