package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.db.reading.Readings;
import yardlight.db.reading.Sample;
import yardlight.escalation.Fixtures;
import yardlight.escalation.reading.Reading;
import yardlight.gateway.SmallGateway;

/** What the lane does with readings, on every database. */
abstract class ReadingsContract {

    private static final String BOX = "mesa-9-box";

    private final Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    private String url;
    private SmallGateway gateway;

    abstract TestDatabase database();

    @BeforeEach
    void start() {
        url = database().newUrl();
        open();
    }

    private void open() {
        gateway = new SmallGateway(database(), url, Fixtures.theSetup(), List.of(), "lane");
    }

    @AfterEach
    void stop() {
        gateway.close();
    }

    @Test
    void stores_them_before_it_answers_and_they_are_there_after_a_restart() {
        assertThat(post(reading("level", 1, 60), reading("level", 2, 0))).containsExactly(Fate.KEPT, Fate.KEPT);
        assertThat(values("level")).containsExactly(1.0, 2.0);

        gateway.close();
        open();

        assertThat(values("level")).containsExactly(1.0, 2.0);
        assertThat(post(reading("level", 3, 60), reading("level", 3, 30))).containsExactly(Fate.REPEATED, Fate.KEPT);
        assertThat(values("level")).containsExactly(1.0, 3.0, 2.0);
    }

    @Test
    void hears_the_box_also_when_all_of_it_was_there_before() {
        post(reading("level", 1, 60));
        Instant first = heard();

        assertThat(post(reading("level", 1, 60))).containsExactly(Fate.REPEATED);

        assertThat(heard()).isAfterOrEqualTo(first);
    }

    @Test
    void takes_nothing_from_before_readings_are_kept() {
        assertThat(gateway.lane().readings(BOX, List.of(reading("level", 1, 3600)), now.minusSeconds(60), false))
                .containsExactly(Fate.TOO_OLD);
        assertThat(values("level")).isEmpty();
    }

    @Test
    void keeps_none_for_later_than_now() {
        post(reading("level", 1, -3600));

        assertThat(gateway.jdbc().queryForObject("select count(*) from reading", Long.class))
                .isEqualTo(1);
        assertThat(values("level")).containsExactly(1.0);
    }

    @Test
    void refuses_a_point_that_is_stored_in_another_unit_unless_that_is_meant() {
        post(in(Optional.empty(), false, 1, 3));
        post(in(Optional.of("ft"), false, 2, 2));
        post(in(Optional.empty(), false, 3, 1));
        assertThat(values("level")).containsExactly(1.0, 2.0, 3.0);

        assertThatThrownBy(() -> post(in(Optional.of("psi"), false, 4, 0))).isInstanceOf(OtherUnit.class);
        assertThat(values("level")).hasSize(3);

        post(in(Optional.of("psi"), true, 4, 0));
        assertThat(values("level")).containsExactly(4.0);
    }

    @Test
    void refuses_what_changes_no_alarm_when_the_allowance_is_spent() {
        post(reading("level", 1, 60));

        assertThatThrownBy(() -> gateway.lane().readings(BOX, List.of(reading("level", 2, 0)), Instant.EPOCH, true))
                .isInstanceOf(TooManyPosts.class);
        assertThat(values("level")).containsExactly(1.0);
    }

    @Test
    void refuses_a_box_that_is_not_set_up() {
        assertThatThrownBy(() ->
                        gateway.lane().readings("stranger", List.of(reading("level", 1, 0)), Instant.EPOCH, false))
                .isInstanceOf(UnknownBox.class);
        assertThat(values("level")).isEmpty();
    }

    private List<Fate> post(PostedReading... readings) {
        return gateway.lane().readings(BOX, List.of(readings), Instant.EPOCH, false);
    }

    private PostedReading reading(String point, double value, int secondsAgo) {
        return new PostedReading(
                new Reading("mesa-9", point, value, now.minusSeconds(secondsAgo)), value, Optional.of("ft"), false);
    }

    private PostedReading in(Optional<String> unit, boolean anew, double value, int secondsAgo) {
        return new PostedReading(
                new Reading("mesa-9", "level", value, now.minusSeconds(secondsAgo)), value, unit, anew);
    }

    private List<Double> values(String point) {
        return new Readings(gateway.jdbc())
                        .series(
                                "mesa-9",
                                point,
                                now.minus(Duration.ofDays(1)),
                                Instant.now().plusSeconds(60),
                                100)
                        .samples()
                        .stream()
                        .map(Sample::mean)
                        .toList();
    }

    private Instant heard() {
        return gateway.jdbc()
                .queryForObject("select heard_at from box_watch where box = ?", java.time.OffsetDateTime.class, BOX)
                .toInstant();
    }
}
