package yardlight.escalation.roster;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

/** A roster laid out in time. */
class StretchTest {

    @Test
    void tours_follow_each_other_and_a_relief_cuts_out_its_own() {
        List<Stretch> week = Fixtures.crew().stretches(at("2026-12-23T00:00"), at("2026-12-29T00:00"));

        assertThat(week)
                .extracting(Stretch::from)
                .containsExactly(
                        at("2026-12-23T00:00"), at("2026-12-24T07:00"), at("2026-12-26T07:00"), at("2026-12-28T07:00"));
        assertThat(week).extracting(one -> one.onCall().orElseThrow()).containsExactly("ana", "ben", "ana", "ben");
        assertThat(week.get(1).tour()).contains("ana");
        assertThat(week).extracting(one -> one.relief().isPresent()).containsExactly(false, true, false, false);
    }

    @Test
    void before_the_first_tour_nobody_is_on_call() {
        List<Stretch> days = Fixtures.crew().stretches(at("2026-11-22T00:00"), at("2026-11-24T00:00"));

        assertThat(days)
                .containsExactly(
                        new Stretch(at("2026-11-22T00:00"), at("2026-11-23T07:00"), Optional.empty(), Optional.empty()),
                        new Stretch(
                                at("2026-11-23T07:00"), at("2026-11-24T00:00"), Optional.of("ana"), Optional.empty()));
        assertThat(Fixtures.crew().tourAt(at("2026-11-22T00:00"))).isEmpty();
    }

    @Test
    void a_tour_is_an_hour_longer_in_the_night_that_the_clock_is_set_back() {
        var nights = new Roster(
                "nights",
                CHICAGO,
                LocalDateTime.parse("2026-10-30T19:00"),
                Duration.ofHours(12),
                List.of("ana", "ben"),
                List.of());

        Stretch night = nights.tourAt(at("2026-11-01T01:30")).orElseThrow();

        assertThat(Duration.between(night.from(), night.to())).isEqualTo(Duration.ofHours(13));
        assertThat(night.to()).isEqualTo(at("2026-11-01T07:00"));
    }

    @Test
    void say_at_every_moment_what_the_roster_says() {
        var random = new Random(11);
        for (int round = 0; round < 200; round++) {
            Roster roster = roster(random);
            Instant from = at("2026-10-20T00:00").plus(Duration.ofMinutes(random.nextInt(60_000)));
            Instant to = from.plus(Duration.ofMinutes(1 + random.nextInt(60_000)));

            List<Stretch> stretches = roster.stretches(from, to);

            assertThat(stretches.get(0).from()).isEqualTo(from);
            assertThat(stretches.get(stretches.size() - 1).to()).isEqualTo(to);
            for (int i = 0; i < stretches.size(); i++) {
                Stretch one = stretches.get(i);
                assertThat(one.from()).isBefore(one.to());
                assertThat(i == 0 ? from : stretches.get(i - 1).to()).isEqualTo(one.from());
                Duration length = Duration.between(one.from(), one.to());
                for (Instant moment : List.of(
                        one.from(),
                        one.from().plus(length.dividedBy(2)),
                        one.to().minusMillis(1))) {
                    assertThat(roster.onCall(moment))
                            .as(roster + " at " + moment)
                            .isEqualTo(one.onCall());
                }
            }
        }
    }

    private static Roster roster(Random random) {
        LocalDateTime start = LocalDateTime.parse("2026-10-25T02:30").plusHours(random.nextInt(200));
        LocalDateTime swap = start.plusMinutes(random.nextInt(20_000));
        return new Roster(
                "crew",
                CHICAGO,
                start,
                Duration.ofHours(1 + random.nextInt(200)),
                List.of("ana", "ben", "cleo"),
                List.of(
                        new Relief(swap, swap.plusMinutes(1 + random.nextInt(5_000)), "dora"),
                        new Relief(swap.plusHours(7), swap.plusHours(8 + random.nextInt(80)), "ben")));
    }
}
