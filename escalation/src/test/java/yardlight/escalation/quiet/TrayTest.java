package yardlight.escalation.quiet;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;

class TrayTest {

    private static final Instant NOW = at("2026-11-25T02:00");
    private static final Restraint THREE_AN_HOUR = Restraint.perHour(3);

    private Desk desk = Desk.empty("ana");

    @Test
    void news_takes_no_room_from_a_call() {
        for (int i = 0; i < 20; i++) {
            desk = desk.sendsNews(NOW.plusSeconds(i)).with(desk.news().waits("n-" + i, NOW));
        }

        for (Priority priority : Priority.values()) {
            assertThat(desk.room(priority, NOW.plusSeconds(60), THREE_AN_HOUR)).isEqualTo(NOW.plusSeconds(60));
        }
        assertThat(desk.looked(NOW.plusSeconds(60), THREE_AN_HOUR.flood()).flood())
                .isFalse();
    }

    @Test
    void news_finds_room_beside_everything_else() {
        desk = desk.sends(NOW, List.of("a")).sendsNews(NOW.plusSeconds(60)).sendsAside(NOW.plusSeconds(120));

        assertThat(desk.roomForNews(NOW.plusSeconds(180), THREE_AN_HOUR)).isEqualTo(NOW.plusSeconds(3600));
    }

    @Test
    void news_comes_twice_in_ten_minutes_at_most() {
        desk = desk.sendsNews(NOW).sendsNews(NOW.plusSeconds(60));

        assertThat(desk.roomForNews(NOW.plusSeconds(61), Restraint.perHour(20))).isEqualTo(NOW.plusSeconds(600));
        assertThat(desk.roomForNews(NOW.plusSeconds(600), Restraint.perHour(20)))
                .isEqualTo(NOW.plusSeconds(600));
    }

    @Test
    void there_is_none_in_a_flood() {
        desk = desk.sends(NOW, IntStream.range(0, 10).mapToObj(i -> "c-" + i).toList());

        assertThat(desk.roomForNews(NOW.plusSeconds(1), Restraint.perHour(20))).isAfter(NOW.plusSeconds(500));
    }

    @Test
    void it_is_due_with_what_else_lies_on_the_desk() {
        desk = desk.waits("n-1", NOW.plusSeconds(300))
                .with(Tray.EMPTY.waits("n-2", NOW.plusSeconds(120)).waits("n-2", NOW.plusSeconds(240)));

        assertThat(desk.dueAt()).contains(NOW.plusSeconds(240));
        assertThat(desk.ready(NOW.plusSeconds(240))).isEmpty();
        assertThat(desk.news().ready(NOW.plusSeconds(239))).isFalse();
        assertThat(desk.news().ready(NOW.plusSeconds(240))).isTrue();
    }
}
