package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Receipt.Fate;
import yardlight.channels.gsm.StatusReport;
import yardlight.channels.gsm.TpAddress;
import yardlight.channels.modem.References.Told;

class ReferencesTest {

    private static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");
    private static final String ANA = "+15755550101";
    private static final int RECEIVED = 0;
    private static final int EXPIRED = 0x46;
    private static final int TRYING = 0x20;

    private final References references = new References(Duration.ofHours(6));

    private static StatusReport report(int number, String digits, int status) {
        return new StatusReport(number, new TpAddress(0x91, digits), Optional.of(NOW), status);
    }

    private Optional<Told> ana(int number, int status) {
        return references.meaning(report(number, "15755550101", status), NOW);
    }

    @Test
    void find_a_text_by_its_number_and_its_recipient() {
        String text = references.taken(ANA, List.of(7), NOW);
        references.taken("+15755550102", List.of(8), NOW);

        assertThat(ana(7, RECEIVED).orElseThrow().reference()).isEqualTo(text);
        assertThat(ana(7, RECEIVED).orElseThrow().fate()).isEqualTo(Fate.DELIVERED);
        assertThat(ana(8, RECEIVED)).isEmpty();
        assertThat(ana(9, RECEIVED)).isEmpty();
    }

    @Test
    void are_done_with_a_text_once_it_is_known_what_became_of_it() {
        references.taken(ANA, List.of(7), NOW);

        references.heeded(ana(7, TRYING).orElseThrow());
        references.heeded(ana(7, RECEIVED).orElseThrow());

        assertThat(ana(7, RECEIVED)).isEmpty();
        String next = references.taken(ANA, List.of(7), NOW.plusSeconds(60));
        assertThat(ana(7, RECEIVED).orElseThrow().reference()).isEqualTo(next);
    }

    @Test
    void take_no_old_text_for_a_new_one_when_the_number_comes_round_again() {
        references.taken(ANA, List.of(7), NOW);
        references.taken(ANA, List.of(7), NOW.plusSeconds(3_600));

        assertThat(ana(7, RECEIVED)).isEmpty();
    }

    @Test
    void forget_a_text_that_nothing_can_be_reported_of_any_more() {
        references.taken(ANA, List.of(7), NOW);
        Instant later = NOW.plus(Duration.ofHours(7)).plusSeconds(1);
        String text = references.taken(ANA, List.of(7), later);

        assertThat(references.meaning(report(7, "15755550101", RECEIVED), later))
                .hasValueSatisfying(told -> assertThat(told.reference()).isEqualTo(text));
    }

    @Test
    void say_of_a_text_in_parts_that_it_arrived_when_all_have() {
        String text = references.taken(ANA, List.of(254, 255, 0), NOW);

        assertThat(ana(0, RECEIVED)).isEmpty();
        assertThat(ana(0, RECEIVED)).isEmpty();
        assertThat(ana(254, RECEIVED)).isEmpty();

        assertThat(ana(255, RECEIVED))
                .hasValueSatisfying(told -> assertThat(told.reference()).isEqualTo(text));
    }

    @Test
    void say_of_a_text_in_parts_that_it_will_not_arrive_when_one_will_not() {
        String text = references.taken(ANA, List.of(1, 2), NOW);

        Told told = ana(1, EXPIRED).orElseThrow();
        references.heeded(told);

        assertThat(told).isEqualTo(new Told(text, Fate.REFUSED, report(1, "15755550101", EXPIRED)));
        assertThat(ana(2, RECEIVED)).isEmpty();
    }

    @Test
    void say_the_same_again_until_it_was_heeded() {
        references.taken(ANA, List.of(7), NOW);

        assertThat(ana(7, EXPIRED)).isEqualTo(ana(7, EXPIRED)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"15755550101", "5755550101", "05755550101", "5550101"})
    void know_a_number_of_which_the_centre_leaves_out_the_beginning(String digits) {
        references.taken(ANA, List.of(7), NOW);

        assertThat(references.meaning(report(7, digits, RECEIVED), NOW)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"15755550102", "550101", "", "115755550101"})
    void take_nobody_for_somebody_else(String digits) {
        references.taken(ANA, List.of(7), NOW);

        assertThat(references.meaning(report(7, digits, RECEIVED), NOW)).isEmpty();
    }
}
