package yardlight.gateway.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Document;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

class SetupReaderTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private final SetupReader reader =
            new SetupReader(List.of(SmtpChannel.mail(Optional.empty()), SmtpChannel.smsMail(Optional.empty())));

    @Test
    void reads_the_document_of_the_contract() {
        Setup setup = reader.read(Document.setupYaml(Documents.CONTRACT));

        assertThat(setup.sites().values()).containsExactly(new Site("mesa-9", "Mesa 9", CHICAGO, "night"));
        var box = setup.boxes().get("mesa-9-box");
        assertThat(box.feed()).contains("wells");
        assertThat(box.link()).contains("hub");
        assertThat(box.battery()).isTrue();
        assertThat(box.every()).contains(Duration.ofMinutes(1));
        assertThat(box.grace()).isEqualTo(Duration.ofMinutes(2));
        Point tank = setup.known("mesa-9", "water-tank").orElseThrow();
        assertThat(tank.name()).isEqualTo("WATER TANK");
        assertThat(tank.priority()).contains(Priority.HIGH);
        assertThat(tank.suppressedWhile()).isEmpty();
        assertThat(tank.inService()).isTrue();
        Contact ana = setup.contacts().get("ana");
        assertThat(ana.language()).isEqualTo(Language.EN);
        assertThat(ana.lines())
                .containsExactly(new Line("sms-mail", "5755550101@txt.example"), new Line("mail", "ana@mesa.example"));
        assertThat(ana.quiet())
                .containsExactly(QuietHours.daily(LocalTime.of(21, 0), LocalTime.of(6, 0), CHICAGO, Priority.HIGH));
        assertThat(setup.rosters().get("crew").tour()).isEqualTo(Duration.ofDays(7));
        assertThat(setup.rosters().get("crew").reliefs())
                .containsExactly(new Relief(
                        LocalDateTime.parse("2026-12-24T07:00"), LocalDateTime.parse("2026-12-26T07:00"), "ben"));
        assertThat(setup.ladders().get("night"))
                .isEqualTo(new Ladder(
                        "night",
                        Ladder.EndsWhen.ACKNOWLEDGED,
                        List.of(
                                new Rung(List.of("ana"), Duration.ofMinutes(5), 2),
                                new Rung(List.of("roster:crew"), Duration.ofMinutes(5), 1),
                                new Rung(List.of("everyone"), Duration.ofMinutes(15), 3)),
                        1));
    }

    @Test
    void fills_in_what_is_usual() {
        Setup setup = reader.read(Document.setupYaml("""
            sites: [{id: dry-fork, zone: America/Denver, ladder: day}]
            boxes: [{id: b, site: dry-fork, heartbeat: {every: PT5M}}]
            points: [{id: low-battery, site: dry-fork}]
            contacts: [{id: ben, lines: [{channel: mail, address: ben@ranch.example}], quiet: [{from: 21:00, to: 6:00:00}]}]
            ladders: [{id: day, rungs: [{call: [ben]}]}]
            """.replace("6:00:00", "\"06:00\"")));

        assertThat(setup.sites().get("dry-fork").name()).isEqualTo("DRY FORK");
        assertThat(setup.boxes().get("b").grace()).isEqualTo(Duration.ofMinutes(2));
        assertThat(setup.known("dry-fork", "low-battery").orElseThrow().name()).isEqualTo("LOW BATTERY");
        Contact ben = setup.contacts().get("ben");
        assertThat(ben.zone()).isEqualTo(ZoneId.of("America/Denver"));
        assertThat(ben.textsPerHour()).isEqualTo(20);
        assertThat(ben.quiet().get(0).lets()).isEqualTo(Priority.HIGH);
        assertThat(setup.ladders().get("day"))
                .isEqualTo(new Ladder(
                        "day",
                        Ladder.EndsWhen.ACKNOWLEDGED,
                        List.of(new Rung(List.of("ben"), Duration.ofMinutes(5), 1)),
                        0));
    }

    @Test
    void reads_who_has_to_sign() {
        Setup setup = reader.read(Document.setupYaml("""
            sites: [{id: m, zone: America/Chicago, ladder: n}]
            boxes: [{id: a, site: m, signed: true}, {id: b, site: m}]
            contacts: [{id: ana, lines: [{channel: mail, address: ana@mesa.example}]}]
            ladders: [{id: n, rungs: [{call: [ana]}]}]
            """));

        assertThat(setup.boxes().get("a").signed()).isTrue();
        assertThat(setup.boxes().get("b").signed()).isFalse();
        assertThat(pointers("boxes: [{id: a, site: m, signed: perhaps}]")).contains("#/boxes/0/signed");
    }

    @Test
    void reads_whose_deadline_is_learned() {
        Setup setup = reader.read(Document.setupYaml("""
            sites: [{id: m, zone: America/Chicago, ladder: l}]
            boxes: [{id: a, site: m, heartbeat: {every: PT1M, learned: true}}, {id: b, site: m, heartbeat: {every: PT1M}}]
            contacts: [{id: ana, lines: [{channel: mail, address: a@b.example}]}]
            ladders: [{id: l, rungs: [{call: [ana], wait: PT1M}]}]
            """));

        assertThat(setup.boxes().get("a").learned()).isTrue();
        assertThat(setup.boxes().get("a").grace()).isEqualTo(Duration.ofMinutes(2));
        assertThat(setup.boxes().get("b").learned()).isFalse();
    }

    @Test
    void names_what_is_wrong_with_a_learned_deadline() {
        assertThat(pointers("boxes: [{id: a, site: m, heartbeat: {learned: true}}]"))
                .contains("#/boxes/0/heartbeat/every");
        assertThat(pointers("boxes: [{id: a, site: m, heartbeat: {every: PT1M, learned: often}}]"))
                .contains("#/boxes/0/heartbeat/learned");
    }

    @Test
    void reads_what_goes_beyond_the_contract() {
        Setup setup = reader.read(Document.setupYaml("""
            sites: [{id: m, zone: America/Chicago, ladder: l}]
            points: [{id: pump, site: m, suppressedWhile: [power-pump/power-off], inService: false, reAlarm: PT8H}]
            contacts:
              - {id: ana, lines: [{channel: mail, address: a@b.example}],
                 quiet: [{from: "22:00", to: "06:00", lets: critical, days: [fri, Sat]}],
                 allsWell: {at: "07:00", days: [mon, Fri]}}
              - {id: ben, zone: America/Denver, lines: [{channel: mail, address: b@b.example}], allsWell: {at: "06:30"}}
            ladders: [{id: l, rungs: [{call: [ana], wait: PT1M}]}]
            """));

        Point pump = setup.known("m", "pump").orElseThrow();
        assertThat(pump.suppressedWhile()).containsExactly("power-pump/power-off");
        assertThat(pump.inService()).isFalse();
        assertThat(pump.timing().realarm()).contains(Duration.ofHours(8));
        assertThat(setup.contacts().get("ana").quiet().get(0).startingOn())
                .isEqualTo(Set.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY));
        assertThat(setup.contacts().get("ana").allsWell())
                .contains(new AllsWell(LocalTime.of(7, 0), CHICAGO, Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)));
        assertThat(setup.contacts().get("ben").allsWell())
                .contains(AllsWell.daily(LocalTime.of(6, 30), ZoneId.of("America/Denver")));
    }

    @Test
    void names_every_mistake_at_once() {
        assertThat(pointers(Documents.WRONG_ALL_OVER))
                .containsExactlyInAnyOrder(
                        "#/sites/0/zone",
                        "#/sites/1/id",
                        "#/sites/1/ladder",
                        "#/boxes/0/site",
                        "#/boxes/0/heartbeat/every",
                        "#/points/0/onDelay",
                        "#/points/0/colour",
                        "#/contacts/0/lines/0/channel",
                        "#/contacts/0/lines/1/address",
                        "#/contacts/0/quiet/0/to",
                        "#/contacts/0/qiuet",
                        "#/contacts/1/zone",
                        "#/contacts/1/lines",
                        "#/rosters/0/order/0",
                        "#/rosters/0/tour",
                        "#/rosters/0/reliefs/0/to",
                        "#/ladders/0/rungs",
                        "#/ladders/1/rungs/0/call/0",
                        "#/ladders/1/rungs/1/wait",
                        "#/ladders/1/again",
                        "#/people");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sites: 5 | #/sites",
                "sites: [mesa-9] | #/sites/0",
                "[] | #",
                "just words | #",
                "{sites: [], sites: []} | #/sites",
                "{a: &x [1], b: *x} | #/b",
                "sites: [{id: Mesa 9, zone: America/Chicago, ladder: l}] | #/sites/0/id",
                "contacts: [{id: ana, allsWell: 5}] | #/contacts/0/allsWell",
                "contacts: [{id: ana, allsWell: {}}] | #/contacts/0/allsWell/at",
                "contacts: [{id: ana, allsWell: {at: noonish}}] | #/contacts/0/allsWell/at",
                "contacts: [{id: ana, allsWell: {at: 07:00, days: []}}] | #/contacts/0/allsWell/days",
                "contacts: [{id: ana, allsWell: {at: 07:00, on: mon}}] | #/contacts/0/allsWell/on",
                "contacts: [{id: ana, away: [{from: 2026-12-24T00:00, to: 2026-12-24T00:00}]}] | #/contacts/0/away/0/to",
                "contacts: [{id: ana, away: [{to: tomorrow}]}] | #/contacts/0/away/0/to",
                "contacts: [{id: ana, quiet: [{from: 21:00, to: 06:00, days: [frii]}]}] | #/contacts/0/quiet/0/days",
            })
    void refuses_what_is_of_another_kind(String yaml, String pointer) {
        assertThat(pointers(yaml)).contains(pointer);
    }

    @Test
    void names_a_wrong_all_s_well_by_field_rule_and_value() {
        Problem problem = catchThrowableOfType(
                Problem.class,
                () -> reader.read(Document.setupYaml(
                        "contacts: [{id: ana, zone: UTC, lines: [{channel: mail, address: a@b.example}],"
                                + " allsWell: {at: noonish, days: [mon, lunes]}}]")));

        assertThat(problem.faults())
                .extracting(fault -> fault.place() + " " + fault.detail())
                .containsExactly(
                        "#/contacts/0/allsWell/at must be a time such as \"21:00\": noonish",
                        "#/contacts/0/allsWell/days must be of mon, tue, wed, thu, fri, sat, sun: lunes");
    }

    @Test
    void does_not_follow_aliases_that_would_grow_a_thousandfold() {
        var bomb = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c <= 'k'; c++) {
            String before = "*" + (char) (c - 1);
            bomb.append(c)
                    .append(": &")
                    .append(c)
                    .append(" [")
                    .append((before + ", ").repeat(8))
                    .append(before)
                    .append("]\n");
        }

        assertThat(pointers(bomb.toString())).hasSizeLessThanOrEqualTo(200).contains("#/b/0", "#/k/8");
    }

    @Test
    void takes_the_other_form_of_the_same_document_for_the_same() {
        String json = SetupText.as(yardlight.gateway.document.Format.JSON, Documents.CONTRACT);
        String yaml = SetupText.as(yardlight.gateway.document.Format.YAML, json);

        assertThat(json).startsWith("{");
        assertThat(yaml).contains("- id: ana").isNotEqualTo(Documents.CONTRACT);
        for (String text : List.of(json, yaml)) {
            Setup setup = reader.read(SetupText.document(text));
            assertThat(setup.contacts())
                    .isEqualTo(
                            reader.read(Document.setupYaml(Documents.CONTRACT)).contacts());
            assertThat(setup.rosters())
                    .isEqualTo(
                            reader.read(Document.setupYaml(Documents.CONTRACT)).rosters());
        }
    }

    @Test
    void gives_back_a_document_letter_by_letter_in_its_own_form() {
        String yaml = "# the night crew\n" + Documents.CONTRACT;

        assertThat(SetupText.as(yardlight.gateway.document.Format.YAML, yaml)).isEqualTo(yaml);
    }

    @Test
    void reads_fifty_thousand_boxes_written_in_either_form() {
        String box =
                "{\"id\": \"box-%d\", \"site\": \"mesa-9\", \"heartbeat\": {\"every\": \"PT1M\", \"grace\": \"PT2M\"}}";
        String many = "{\"sites\": [{\"id\": \"mesa-9\", \"zone\": \"America/Chicago\", \"ladder\": \"night\"}],\n"
                + "\"boxes\": [\n"
                + IntStream.range(0, 50_000).mapToObj(box::formatted).collect(Collectors.joining(",\n"))
                + "],\n"
                + "\"contacts\": [{\"id\": \"ana\", \"lines\": [{\"channel\": \"mail\", \"address\":"
                + " \"ana@mesa.example\"}]}],\n"
                + "\"ladders\": [{\"id\": \"night\", \"rungs\": [{\"call\": [\"ana\"], \"wait\":"
                + " \"PT5M\"}]}]}";

        assertThat(reader.read(Document.setupYaml(many)).boxes()).hasSize(50_000);
        assertThat(reader.read(Document.setupJson(many)).boxes()).hasSize(50_000);
    }

    private List<String> pointers(String yaml) {
        Problem problem = catchThrowableOfType(Problem.class, () -> reader.read(Document.setupYaml(yaml)));
        assertThat(problem.status().value()).isEqualTo(422);
        return problem.faults().stream().map(Fault::place).toList();
    }
}
