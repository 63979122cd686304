package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

@ExtendWith(OutputCaptureExtension.class)
class RoundTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration UP = Duration.ofHours(3);

    private final List<Duration> told = new ArrayList<>();
    private Optional<String> trouble = Optional.empty();
    private Other.Told answer = Other.Told.heard(Optional.empty());
    private final Round round = new Round(
            () -> trouble,
            uptime -> {
                told.add(uptime);
                return answer;
            },
            "yard.example",
            MINUTE);

    @BeforeEach
    void listen_to_all_of_the_log() {
        log(Level.INFO);
    }

    @AfterEach
    void listen_as_before() {
        log(null);
    }

    private static void log(Level level) {
        ((Logger) LoggerFactory.getLogger(Round.class)).setLevel(level);
    }

    @Test
    void tells_the_other_one_how_long_this_one_has_been_up() {
        assertThat(round.go(UP)).isEqualTo(MINUTE);

        assertThat(told).containsExactly(UP);
    }

    @Test
    void says_nothing_while_this_one_does_not_do_its_work() {
        trouble = Optional.of("nothing was stored for 15 s");

        round.go(UP);
        round.go(UP);

        assertThat(told).isEmpty();
    }

    @Test
    void says_it_again_as_soon_as_it_does() {
        trouble = Optional.of("nothing was stored for 15 s");
        round.go(UP);
        trouble = Optional.empty();

        round.go(UP);

        assertThat(told).hasSize(1);
    }

    @Test
    void follows_the_pace_that_the_other_one_asks_for() {
        answer = Other.Told.heard(Optional.of(Duration.ofMinutes(5)));
        assertThat(round.go(UP)).hasMinutes(5);

        answer = Other.Told.heard(Optional.empty());
        assertThat(round.go(UP)).hasMinutes(5);
    }

    @Test
    void follows_no_pace_that_would_hurt() {
        answer = Other.Told.heard(Optional.of(Duration.ZERO));
        assertThat(round.go(UP)).hasSeconds(1);

        answer = Other.Told.heard(Optional.of(Duration.ofDays(31)));
        assertThat(round.go(UP)).hasHours(1);
    }

    @Test
    void looks_again_sooner_after_trouble() {
        answer = Other.Told.unheard("it answers 503");
        assertThat(round.go(UP)).hasSeconds(15);

        trouble = Optional.of("nothing was stored for 15 s");
        assertThat(round.go(UP)).hasSeconds(15);
    }

    @Test
    void looks_again_within_a_minute_however_slow_the_pace_is() {
        answer = Other.Told.heard(Optional.of(Duration.ofHours(1)));
        round.go(UP);
        answer = Other.Told.unheard("it answers 503");

        assertThat(round.go(UP)).isEqualTo(MINUTE);
    }

    @Test
    void what_keeps_the_other_one_from_hearing_is_in_the_log_once_and_once_more_when_it_is_over(CapturedOutput log) {
        round.go(UP);
        answer = Other.Told.unheard("yard.example cannot be reached: Connection refused");
        round.go(UP);
        round.go(UP);
        round.go(UP);
        answer = Other.Told.heard(Optional.empty());
        round.go(UP);
        round.go(UP);

        assertThat(log).containsOnlyOnce("does not hear that all is well here: yard.example cannot be reached");
        assertThat(log.getOut().split("hears that all is well here; it expects to every PT1M", -1))
                .hasSize(3);
    }

    @Test
    void that_this_one_is_not_well_is_in_the_log_with_the_reason(CapturedOutput log) {
        trouble = Optional.of("nothing goes out by mail");

        round.go(UP);
        round.go(UP);

        assertThat(log).containsOnlyOnce("is not told that all is well here: nothing goes out by mail");
    }
}
