package yardlight.escalation.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class PlaceTest {

    private final Ladder night = Fixtures.night();

    @Test
    void the_whole_climb_goes_round_by_round_and_rung_by_rung_and_then_once_again() {
        List<Place> climbed = Stream.iterate(
                        Optional.of(Place.FOOT), Optional::isPresent, place -> place.flatMap(at -> at.next(night)))
                .map(Optional::orElseThrow)
                .toList();

        assertThat(climbed)
                .containsExactly(
                        new Place(0, 0, 0),
                        new Place(0, 0, 1),
                        new Place(0, 1, 0),
                        new Place(0, 2, 0),
                        new Place(0, 2, 1),
                        new Place(0, 2, 2),
                        new Place(1, 0, 0),
                        new Place(1, 0, 1),
                        new Place(1, 1, 0),
                        new Place(1, 2, 0),
                        new Place(1, 2, 1),
                        new Place(1, 2, 2));
    }

    @Test
    void the_next_rung_leaves_out_the_rounds_that_are_left() {
        assertThat(Place.FOOT.nextRung(night)).contains(new Place(0, 1, 0));
        assertThat(new Place(0, 2, 0).nextRung(night)).contains(new Place(1, 0, 0));
        assertThat(new Place(1, 2, 0).nextRung(night)).isEmpty();
    }

    @Test
    void a_place_above_a_ladder_that_was_made_shorter_is_its_end() {
        var shorter = new Ladder("night", night.endsWhen(), night.rungs().subList(0, 1), 0);

        assertThat(new Place(0, 2, 0).next(shorter)).isEmpty();
        assertThat(new Place(0, 0, 5).next(shorter)).isEmpty();
    }

    @Test
    void a_place_above_a_shorter_ladder_goes_back_to_the_foot_when_it_is_climbed_again() {
        var shorter = new Ladder("night", night.endsWhen(), night.rungs().subList(0, 1), 1);

        assertThat(new Place(0, 2, 0).next(shorter)).contains(new Place(1, 0, 0));
    }

    @Test
    void there_is_nothing_below_the_foot() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Place(0, -1, 0))
                .withMessage("place must not be below the foot: 0, -1, 0");
    }

    @Test
    void rungs_and_ladders_refuse_what_would_call_nobody_or_never_go_on() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rung(List.of(), Duration.ofMinutes(5), 1))
                .withMessage("rung must call somebody");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rung(List.of("ana"), Duration.ZERO, 1))
                .withMessage("rung wait must be positive: PT0S");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rung(List.of("ana"), Duration.ofMinutes(5), 0))
                .withMessage("rung rounds must be at least 1: 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ladder("night", night.endsWhen(), List.of(), 0))
                .withMessage("ladder must have at least one rung: night");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ladder("night", night.endsWhen(), night.rungs(), -1))
                .withMessage("again must not be negative: -1");
    }
}
