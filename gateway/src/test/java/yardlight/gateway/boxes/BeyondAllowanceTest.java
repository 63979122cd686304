package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.bucket4j.TimeMeter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.InstantSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import yardlight.escalation.Fixtures;
import yardlight.gateway.FakeLane;
import yardlight.gateway.TestGateway;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.wire.Posts;

/** What happens to the posts of a box that has spent its allowance. */
class BeyondAllowanceTest {

    private static final String EVENT = "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\"}";

    private final PostingBox box = new PostingBox(Fixtures.aBox(), "");
    private final FakeLane lane = new FakeLane();
    private final Allowance allowance = new Allowance(2, Duration.ofMinutes(1), TimeMeter.SYSTEM_NANOTIME);
    private final InstantSource clock = InstantSource.fixed(TestGateway.NOW);
    private final EventsController events = new EventsController(lane, allowance, new Posts(clock), clock);
    private final HeartbeatsController heartbeats = new HeartbeatsController(lane, allowance, new Posts(clock), clock);

    @BeforeEach
    void spend_it() {
        allowance.take(box.getName(), 2);
    }

    @Test
    void an_event_that_is_news_is_taken() throws IOException {
        events.post(request("application/json", EVENT), box);

        assertThat(lane.events).hasSize(1);
    }

    @Test
    void a_repeat_is_refused_with_429_and_a_wait() {
        lane.nothingIsNews = true;

        Problem refusal =
                catchThrowableOfType(Problem.class, () -> events.post(request("application/json", EVENT), box));

        assertThat(refusal.status().value()).isEqualTo(429);
        assertThat(refusal.headers())
                .hasEntrySatisfying(
                        "Retry-After",
                        wait -> assertThat(Integer.parseInt(wait)).isBetween(1, 60));
    }

    @Test
    void a_backlog_that_is_larger_than_what_is_left_counts_as_beyond() {
        var fresh = new Allowance(2, Duration.ofMinutes(1), TimeMeter.SYSTEM_NANOTIME);
        var door = new EventsController(lane, fresh, new Posts(clock), clock);
        lane.nothingIsNews = true;

        Problem refusal = catchThrowableOfType(
                Problem.class, () -> door.post(request("application/x-ndjson", (EVENT + "\n").repeat(201)), box));

        assertThat(refusal.status().value()).isEqualTo(429);
    }

    @Test
    void a_heartbeat_without_news_is_refused() {
        Problem refusal = catchThrowableOfType(
                Problem.class, () -> heartbeats.post(request("application/json", "{\"feeds\":{\"pump\":true}}"), box));

        assertThat(refusal.status().value()).isEqualTo(429);
        assertThat(lane.heartbeats).isEmpty();
    }

    @Test
    void a_heartbeat_that_says_a_feed_is_off_is_taken() throws IOException {
        heartbeats.post(request("application/json", "{\"feeds\":{\"pump\":false}}"), box);

        assertThat(lane.heartbeats).hasSize(1);
    }

    private static MockHttpServletRequest request(String type, String body) {
        var request = new MockHttpServletRequest("POST", "/api/v1/events");
        request.setContentType(type);
        request.setContent(body.getBytes(StandardCharsets.UTF_8));
        return request;
    }
}
