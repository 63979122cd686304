package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessResourceFailureException;
import yardlight.channels.FakeChannel;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.lane.LaneBusy;

/** What makes a gateway that still answers HTTP no longer say that it is well. */
class VitalsTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    private static final Vital WELL = Optional::empty;

    @Test
    void all_is_well_when_nothing_is_wrong() {
        assertThat(new Wellbeing(List.of(WELL, WELL)).trouble()).isEmpty();
    }

    @Test
    void the_first_thing_that_is_wrong_is_said() {
        Vital first = () -> Optional.of("nothing was stored for 15 s");
        Vital second = () -> Optional.of("nothing goes out by mail");

        assertThat(new Wellbeing(List.of(WELL, first, second)).trouble()).contains("nothing was stored for 15 s");
    }

    @Test
    void what_cannot_be_asked_is_not_well_and_nothing_of_the_inside_is_said() {
        Vital away = () -> {
            throw new DataAccessResourceFailureException("jdbc:h2:file:/secret/place");
        };

        assertThat(new Wellbeing(List.of(WELL, away)).trouble())
                .hasValueSatisfying(words -> assertThat(words)
                        .contains("cannot be looked at: DataAccessResourceFailureException")
                        .doesNotContain("secret"));
    }

    @Test
    void a_writer_that_stores_is_well() {
        assertThat(storing(CompletableFuture.completedFuture(null)).trouble()).isEmpty();
    }

    @Test
    void a_writer_that_is_stuck_is_not() {
        assertThat(storing(new CompletableFuture<>()).trouble()).contains("nothing was stored for 0 s");
    }

    @Test
    void a_writer_whose_database_is_away_is_not() {
        assertThat(storing(CompletableFuture.failedFuture(new LaneBusy("the database does not answer", null)))
                        .trouble())
                .contains("nothing is stored: the database does not answer");
    }

    @Test
    void work_that_is_due_may_be_a_moment_late() {
        assertThat(inTime(Optional.empty(), Pace.REAL).trouble()).isEmpty();
        assertThat(inTime(Optional.of(NOW.minusSeconds(60)), Pace.REAL).trouble())
                .isEmpty();
    }

    @Test
    void work_that_is_due_and_not_done_is_trouble() {
        assertThat(inTime(Optional.of(NOW.minusSeconds(61)), Pace.REAL).trouble())
                .contains("what is due is done 61 s late");
    }

    @Test
    void how_late_goes_by_the_wall_when_the_gateway_s_clock_is_fast() {
        Pace hundredfold = span -> span.dividedBy(100);

        assertThat(inTime(Optional.of(NOW.minusSeconds(6_000)), hundredfold).trouble())
                .isEmpty();
    }

    @Test
    void one_channel_that_people_have_lines_on_is_enough() {
        assertThat(ways(Fixtures.theSetup(), FakeChannel.named("mail"), FakeChannel.notConfigured("sms-mail"))
                        .trouble())
                .isEmpty();
    }

    @Test
    void without_any_nothing_goes_out() {
        FakeChannel troubled = FakeChannel.named("sms-mail");
        troubled.troubled(Optional.of("connection refused"));

        assertThat(ways(Fixtures.theSetup(), troubled, FakeChannel.notConfigured("mail"), FakeChannel.named("nobody-s"))
                        .trouble())
                .contains("nothing goes out by mail, sms-mail");
    }

    @Test
    void while_nobody_can_be_told_no_channel_is_missing() {
        assertThat(ways(Setup.EMPTY, FakeChannel.notConfigured("mail")).trouble())
                .isEmpty();
    }

    private static Storing storing(CompletableFuture<Void> probe) {
        return new Storing(() -> probe, Duration.ofMillis(20));
    }

    private static InTime inTime(Optional<Instant> oldest, Pace pace) {
        return new InTime(now -> oldest, InstantSource.fixed(NOW), pace);
    }

    private static WaysOut ways(Setup setup, FakeChannel... channels) {
        return new WaysOut(() -> setup, List.of(channels));
    }
}
