package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.SwapNight.ana;
import static yardlight.escalation.SwapNight.asleep;
import static yardlight.escalation.SwapNight.person;
import static yardlight.escalation.SwapNight.said;
import static yardlight.escalation.SwapNight.setup;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.swap.Part;

/** How much of the setup is worked through, on the lane, when somebody asks for a swap. */
class SwapSilenceTest {

    private static final LocalDateTime FROM = LocalDateTime.parse("2026-11-26T07:00");

    @Test
    void only_sites_whose_ladder_comes_to_the_roster_are_looked_at() {
        Setup setup = sites(Map.of(
                "own", "roster:crew",
                "in-order", "roster:above",
                "in-relief", "roster:beside",
                "twice", "roster:top",
                "none", "roster:other",
                "person", "ana",
                "all", Rung.EVERYONE));

        assertThat(SwapSilence.sites(setup, "crew")).containsExactlyInAnyOrder("own", "in-order", "in-relief", "twice");
    }

    @Test
    void more_than_sixty_days_are_refused() {
        var play = new Play(setup(List.of(), ana(), person("ben", Language.EN)));

        assertThat(ask(play, Swaps.LONGEST_PART.plusMinutes(1)))
                .isInstanceOfSatisfying(
                        Answer.Refusal.class,
                        refusal -> assertThat(refusal.reason())
                                .isEqualTo("no more than 60 days can be asked for at once"));
        assertThat(ask(play, Swaps.LONGEST_PART)).isInstanceOf(Answer.Swapped.class);
    }

    /** The night is covered by the crew only where the ladder comes to it through another roster. */
    @Test
    void nobody_is_asked_with_whom_a_site_behind_another_roster_would_have_nobody() {
        Setup plain = setup(List.of(), ana(), asleep("ben", Priority.CRITICAL));
        var play = new Play(with(
                plain,
                List.of(plain.rosters().get("crew"), roster("above", "roster:crew")),
                List.of(ladder("night", "roster:above")),
                List.copyOf(plain.sites().values())));

        assertThat(ask(play, Duration.ofDays(1)))
                .isInstanceOfSatisfying(
                        Answer.Refusal.class,
                        refusal -> assertThat(refusal.reason()).contains("nobody would be called at once then"));
    }

    private static Answer ask(Play play, Duration length) {
        var part = new Part(FROM, FROM.plus(length));
        return play.at("2026-11-25T12:00", said(new SwapSaid.AskedFor("ana", "crew", part, Optional.of("owner"))));
    }

    private static Setup sites(Map<String, String> calls) {
        Setup plain = setup(List.of(), ana(), person("ben", Language.EN));
        Roster beside = roster("beside", "ana").with(new Relief(FROM, FROM.plusDays(1), "roster:crew"));
        var ladders = new ArrayList<Ladder>();
        var sites = new ArrayList<Site>();
        calls.forEach((site, call) -> {
            ladders.add(ladder(site, call));
            sites.add(new Site(site, site, Fixtures.CHICAGO, site));
        });
        return with(
                plain,
                List.of(
                        roster("top", "roster:above"),
                        roster("above", "roster:crew"),
                        beside,
                        roster("other", "ana"),
                        plain.rosters().get("crew")),
                ladders,
                sites);
    }

    private static Setup with(Setup setup, List<Roster> rosters, List<Ladder> ladders, List<Site> sites) {
        return new Setup(
                sites, List.of(), List.of(), List.copyOf(setup.contacts().values()), rosters, ladders);
    }

    private static Roster roster(String id, String who) {
        return new Roster(id, Fixtures.CHICAGO, FROM.minusDays(30), Duration.ofDays(7), List.of(who), List.of());
    }

    private static Ladder ladder(String id, String call) {
        return new Ladder(
                id, Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of(call), Duration.ofMinutes(5), 1)), 1);
    }
}
