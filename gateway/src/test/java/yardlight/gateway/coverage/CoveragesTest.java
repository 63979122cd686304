package yardlight.gateway.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** What is worked out beforehand, and what the first page and an answer to a setup say of it. It is 2:13 AM at Mesa 9. */
@GatewayTest
class CoveragesTest {

    static final Setup ONLY_ANA = Fixtures.calling(new Ladder(
            "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of("ana"), Duration.ofMinutes(5), 2)), 0));

    private static final Gap RUNNING =
            new Gap(TestGateway.NOW, Fixtures.at("2026-11-25T06:00"), Set.of(Priority.LOW, Priority.MEDIUM));

    private final Coverages coverages;
    private final TestGateway.InMemorySetup inForce;
    private final Doors doors;
    private final FakeLane lane;

    CoveragesTest(Coverages coverages, TestGateway.InMemorySetup inForce, Doors doors, FakeLane lane) {
        this.coverages = coverages;
        this.inForce = inForce;
        this.doors = doors;
        this.lane = lane;
    }

    /** Others share the lane and leave it as it is. */
    @BeforeEach
    void nothing_is_decided_yet() {
        lane.clear();
    }

    @AfterEach
    void back() {
        inForce.set(Fixtures.theSetup());
        lane.clear();
    }

    private String board() {
        coverages.recount(() -> true);
        var page = doors.as("reader", HttpMethod.GET, "/").exchange();
        assertThat(page).hasStatusOk().bodyText().contains("Wants doing");
        return new String(page.getResponse().getContentAsByteArray(), java.nio.charset.StandardCharsets.UTF_8);
    }

    @Test
    void the_first_page_names_the_gap_of_a_site_in_one_line() {
        inForce.set(ONLY_ANA);

        assertThat(board())
                .containsOnlyOnce("/sites/mesa-9/coverage")
                .contains("nobody would hear low and medium alarms at once from now to Wed 6:00 AM,"
                        + " and 400 more times");
        assertThat(coverages.outlook().orElseThrow().sites()).isEqualTo(Map.of("mesa-9", new Gaps.Ahead(RUNNING, 400)));
    }

    @Test
    void the_first_page_says_nothing_of_gaps_when_somebody_is_always_called() {
        inForce.set(Fixtures.theSetup());

        assertThat(board()).doesNotContain("/sites/mesa-9/coverage", "nobody would hear");
    }

    @Test
    void what_was_found_of_another_setup_is_not_shown_and_is_found_anew() {
        coverages.recount(() -> true);
        assertThat(coverages.stale()).isFalse();

        inForce.set(ONLY_ANA);

        assertThat(coverages.stale()).isTrue();
        assertThat(coverages.outlook()).isEmpty();
        coverages.recount(() -> false);
        assertThat(coverages.outlook()).isEmpty();
        coverages.recount(() -> true);
        assertThat(coverages.outlook()).isPresent();
        assertThat(coverages.stale()).isFalse();
    }

    /** Whatever else is to be stored meanwhile, nothing of this is handed to the lane. */
    @Test
    void what_was_found_holds_until_a_line_is_stopped_a_day_has_passed_or_the_gap_is_over() {
        var stop = Set.of(new AlarmKey("gateway", "ana-x", "said-stop"));
        Instant now = TestGateway.NOW;
        var outlook = new Outlook(ONLY_ANA, Set.of(), now, Map.of("mesa-9", new Gaps.Ahead(RUNNING, 1)));
        var calm = new Outlook(ONLY_ANA, Set.of(), now, Map.of());

        assertThat(outlook.holds(ONLY_ANA, Set.of(), now.plusSeconds(60))).isTrue();
        assertThat(outlook.holds(ONLY_ANA, stop, now.plusSeconds(60))).isFalse();
        assertThat(outlook.holds(Fixtures.theSetup(), Set.of(), now.plusSeconds(60)))
                .isFalse();
        assertThat(outlook.holds(ONLY_ANA, Set.of(), RUNNING.to())).isFalse();
        assertThat(calm.holds(ONLY_ANA, Set.of(), RUNNING.to())).isTrue();
        assertThat(calm.holds(ONLY_ANA, Set.of(), now.plus(Outlook.FRESH))).isFalse();
        assertThat(lane.decided).isEmpty();
    }

    /** Each with a minute of their own, all on one rung. */
    private static Setup aThousandSleepers() {
        List<Contact> sleepers = IntStream.range(0, 1_000)
                .mapToObj(i -> new Contact(
                        "p" + i,
                        "P" + i,
                        Fixtures.CHICAGO,
                        Language.EN,
                        List.of(new Line("mail", "p" + i + "@ranch.example")),
                        List.of(QuietHours.daily(
                                LocalTime.MIDNIGHT.plusMinutes(i),
                                LocalTime.MIDNIGHT.plusMinutes(i + 400),
                                Fixtures.CHICAGO,
                                Priority.HIGH)),
                        20))
                .toList();
        var everyone = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(5), 1)),
                0);
        return new Setup(List.of(Fixtures.aSite()), List.of(), List.of(), sleepers, List.of(), List.of(everyone));
    }

    @Test
    void what_would_take_too_long_is_said_to_be_unknown_and_not_tried_again_and_again() {
        inForce.set(aThousandSleepers());

        assertThat(board()).contains("Whether somebody would hear at every hour is not known of every site");

        assertThat(coverages.stale()).isFalse();
        assertThat(coverages.opened(Fixtures.theSetup(), aThousandSleepers()).nothing())
                .isTrue();
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/mesa-9/coverage").exchange())
                .hasStatus(422);
    }

    @Test
    void a_setup_that_opens_gaps_is_stored_and_the_answer_names_them() {
        var put = doors.as("owner", HttpMethod.PUT, "/api/v1/setup")
                .contentType(MediaType.parseMediaType("application/yaml"))
                .content("""
                        sites: [{id: mesa-9, name: Mesa 9, zone: America/Chicago, ladder: night}]
                        contacts:
                          - id: ana
                            name: Ana Ruelas
                            lines: [{channel: mail, address: ana@mesa.example}]
                            quiet: [{from: "21:00", to: "06:00", lets: high}]
                        ladders: [{id: night, rungs: [{call: [ana], wait: PT5M}]}]
                        """)
                .exchange();

        assertThat(put)
                .hasStatusOk()
                .bodyJson()
                .extractingPath("$.gaps")
                .asArray()
                .containsExactly(Map.of(
                        "site", "mesa-9",
                        "priorities", List.of("low", "medium"),
                        "from", "2026-11-25T08:13:00Z",
                        "to", "2026-11-25T12:00:00Z",
                        "more", 400));
        assertThat(lane.decided).hasSize(1);
    }

    @Test
    void an_edit_opens_what_was_none_before_at_sites_old_and_new() {
        assertThat(coverages.opened(Fixtures.theSetup(), ONLY_ANA).of("mesa-9"))
                .isEqualTo(new Gaps.Ahead(RUNNING, 400));
        assertThat(coverages.opened(ONLY_ANA, ONLY_ANA).nothing()).isTrue();
        assertThat(coverages.opened(ONLY_ANA, Fixtures.theSetup()).nothing()).isTrue();
        assertThat(coverages.opened(Setup.EMPTY, ONLY_ANA).sites()).containsOnlyKeys("mesa-9");
    }
}
