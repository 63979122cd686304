package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.escalation.Stimulus;

class CarriersTest {

    private static final Attempt AWAY = Attempt.deferred("cannot be reached").forEveryMessage();

    private final FakeIntake intake = new FakeIntake();
    private Instant now = Instant.parse("2026-11-25T08:13:00Z");
    private Set<String> known = Set.of();
    private final Carriers carriers = new Carriers(List.of("mail", "sms-mail"), intake, () -> known, () -> now);

    @Test
    void one_that_is_down_gets_nothing_and_the_others_all() {
        fails();

        assertThat(carriers.lets("sms-mail", 8, 0)).isZero();
        assertThat(carriers.broken("sms-mail")).isTrue();
        assertThat(carriers.lets("mail", 8, 0)).isEqualTo(8);
    }

    @Test
    void what_is_about_the_line_breaks_nothing() {
        for (int i = 0; i < 10; i++) {
            carriers.heard("sms-mail", Attempt.deferred("450 grey"));
            carriers.heard("sms-mail", Attempt.refused("550 no"));
        }

        assertThat(carriers.lets("sms-mail", 8, 3)).isEqualTo(8);
    }

    @Test
    void people_hear_of_it_when_somebody_has_knocked_in_vain() {
        fails();
        assertThat(intake.stimuli).isEmpty();
        assertThat(carriers.wantsKnock("sms-mail")).isFalse();

        now = now.plusSeconds(5);
        assertThat(carriers.wantsKnock("sms-mail")).isTrue();
        carriers.knocked("sms-mail", Optional.of("cannot be reached"));

        assertThat(intake.stimuli).containsExactly(new Stimulus.Carrier("sms-mail", true, "cannot be reached"));
        assertThat(carriers.wantsKnock("sms-mail")).isFalse();
    }

    @Test
    void one_message_goes_ahead_when_a_knock_is_answered_and_all_follow_when_it_is_taken() {
        fails();
        carriers.knocked("sms-mail", Optional.empty());

        assertThat(intake.stimuli).containsExactly(new Stimulus.Carrier("sms-mail", false, "it answers"));
        assertThat(carriers.lets("sms-mail", 8, 0)).isEqualTo(1);
        assertThat(carriers.lets("sms-mail", 7, 1)).isZero();

        carriers.heard("sms-mail", Attempt.accepted("250 taken"));

        assertThat(carriers.lets("sms-mail", 8, 0)).isEqualTo(8);
    }

    @Test
    void one_that_counts_as_down_though_nothing_is_known_against_it_is_knocked_at() {
        known = Set.of("mail", "long-gone");
        carriers.compare();

        assertThat(carriers.wantsKnock("mail")).isTrue();
        assertThat(carriers.wantsKnock("sms-mail")).isFalse();
    }

    @Test
    void one_that_is_down_is_left_alone_until_it_is_time_whoever_says_so() {
        fails();
        known = Set.of("sms-mail");
        carriers.compare();

        assertThat(carriers.wantsKnock("sms-mail")).isFalse();
    }

    private void fails() {
        for (int i = 0; i < Circuit.MOST_FAILURES; i++) {
            carriers.heard("sms-mail", AWAY);
        }
    }
}
