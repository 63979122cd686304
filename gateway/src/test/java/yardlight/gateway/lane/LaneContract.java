package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static yardlight.gateway.lane.Saying.active;
import static yardlight.gateway.lane.Saying.named;
import static yardlight.gateway.lane.Saying.normal;
import static yardlight.gateway.lane.Saying.raised;
import static yardlight.gateway.lane.Saying.saying;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Answer;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.SmallGateway;

/** What the lane has to do on every database. */
abstract class LaneContract {

    private static final String BOX = "mesa-9-box";

    private SmallGateway gateway;
    private Lane lane;

    abstract TestDatabase database();

    /** Cuts every connection that the gateway has. */
    abstract void cut(SmallGateway gateway);

    @BeforeEach
    void start() {
        gateway = new SmallGateway(database(), database().newUrl(), Fixtures.theSetup(), List.of(), "lane");
        lane = gateway.lane();
    }

    @AfterEach
    void stop() {
        gateway.close();
    }

    @Test
    void stores_an_event_with_all_that_follows_from_it_before_it_answers() {
        List<Answer.Result> results = lane.events(BOX, List.of(active(Fixtures.TANK)), false);

        assertThat(results)
                .containsExactly(new Answer.Result(Outcome.OCCURRED, Optional.of("mesa-9.water-tank.high-high.1")));
        assertThat(count("event")).isEqualTo(1);
        assertThat(count("alarm where state = 'unacknowledged'")).isEqualTo(1);
        assertThat(count("callout where kind = 'calling'")).isEqualTo(1);
        assertThat(count("due where kind = 'callout'")).isEqualTo(1);
        assertThat(count("outbox")).isEqualTo(1);
    }

    @Test
    void knows_an_id_again_within_a_posting_and_later_on() {
        PostedEvent event = named("e-1", active(Fixtures.TANK));

        List<Answer.Result> first = lane.events(BOX, List.of(event, event), false);
        List<Answer.Result> second = lane.events(BOX, List.of(event), false);

        assertThat(first).extracting(Answer.Result::outcome).containsExactly(Outcome.OCCURRED, Outcome.DUPLICATE);
        assertThat(second)
                .containsExactly(new Answer.Result(Outcome.DUPLICATE, Optional.of("mesa-9.water-tank.high-high.1")));
        assertThat(count("event")).isEqualTo(3);
    }

    @Test
    void knows_an_id_again_within_a_batch() {
        PostedEvent event = named("e-1", active(Fixtures.TANK));

        List<Outcome> outcomes =
                inOneBatch(() -> lane.events(BOX, List.of(event), false), () -> lane.events(BOX, List.of(event), false))
                        .stream()
                        .map(results -> results.get(0).outcome())
                        .toList();

        assertThat(outcomes).containsExactlyInAnyOrder(Outcome.OCCURRED, Outcome.DUPLICATE);
    }

    @Test
    void takes_an_id_of_31_days_ago_for_a_new_one() {
        PostedEvent event = named("e-1", active(Fixtures.TANK));
        lane.events(BOX, List.of(event), false);
        gateway.jdbc()
                .update(
                        "update event set received_at = ?",
                        Instant.now().minus(Duration.ofDays(31)).atOffset(ZoneOffset.UTC));

        assertThat(lane.events(BOX, List.of(event), false).get(0).outcome()).isEqualTo(Outcome.REPEATED);
    }

    @Test
    void refuses_nothing_but_repeats_when_the_allowance_is_spent() {
        lane.events(BOX, List.of(named("e-1", active(Fixtures.TANK))), true);

        assertThatThrownBy(() ->
                        lane.events(BOX, List.of(active(Fixtures.TANK), named("e-1", active(Fixtures.TANK))), true))
                .isInstanceOf(TooManyPosts.class);
        assertThat(count("event")).isEqualTo(1);

        assertThat(outcome(active(Fixtures.PUMP))).isEqualTo(Outcome.OCCURRED);
        assertThat(outcome(raised(Fixtures.TANK))).isEqualTo(Outcome.REPEATED);
        assertThat(outcome(normal(Fixtures.TANK))).isEqualTo(Outcome.RETURNED);
    }

    @Test
    void lets_a_thing_that_cannot_be_decided_fail_alone() {
        var nonsense = new Heartbeat(
                Optional.empty(), Map.of("Not A Feed", false), Optional.empty(), Optional.empty(), Optional.empty());

        List<CompletableFuture<List<Answer.Result>>> both = handed(
                () -> {
                    lane.heartbeat(BOX, nonsense);
                    return List.of();
                },
                () -> lane.events(BOX, List.of(active(Fixtures.TANK)), false));

        assertThatThrownBy(both.get(0)::join).hasCauseInstanceOf(IllegalArgumentException.class);
        assertThat(both.get(1).join()).hasSize(1);
        assertThat(count("event")).isEqualTo(1);
    }

    @Test
    void lets_a_thing_that_cannot_be_stored_fail_alone() {
        var endless =
                new Measured(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("x".repeat(5_000)));

        List<CompletableFuture<List<Answer.Result>>> both = handed(
                () -> lane.events(BOX, List.of(saying(Fixtures.PUMP, endless)), false),
                () -> lane.events(BOX, List.of(active(Fixtures.TANK)), false));

        assertThatThrownBy(both.get(0)::join).isInstanceOf(CompletionException.class);
        assertThat(both.get(1).join()).hasSize(1);
        assertThat(count("event")).isEqualTo(1);
    }

    @Test
    void lets_a_thing_that_cannot_even_be_looked_at_fail_alone() {
        List<CompletableFuture<List<Answer.Result>>> both = handed(
                () -> lane.events(BOX, List.of(new PostedEvent(Optional.empty(), null)), false),
                () -> lane.events(BOX, List.of(active(Fixtures.TANK)), false));

        assertThatThrownBy(both.get(0)::join).isInstanceOf(CompletionException.class);
        assertThat(both.get(1).join()).hasSize(1);
        assertThat(count("event")).isEqualTo(1);
    }

    @Test
    void refuses_while_the_database_is_away_and_goes_on_when_it_is_back() {
        lane.events(BOX, List.of(active(Fixtures.TANK)), false);

        cut(gateway);

        await().atMost(Duration.ofSeconds(15)).until(() -> {
            try {
                return lane.events(BOX, List.of(active(Fixtures.PUMP)), false).size() == 1;
            } catch (LaneBusy busy) {
                return false;
            }
        });
        assertThat(count("alarm where current_key > ''")).isEqualTo(2);
    }

    @Test
    void keeps_a_setup_with_its_document_and_follows_what_another_gateway_stores() {
        lane.setup("another", new Stimulus.SetupChanged(Fixtures.theSetup(), "owner"));

        assertThat(gateway.jdbc().queryForList("select document from setup_version where version = 2", String.class))
                .containsExactly("another");
        assertThatThrownBy(() -> lane.decide(new Stimulus.SetupChanged(Fixtures.theSetup(), "owner")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void writes_a_box_once_for_many_heartbeats_and_leaves_no_line_in_the_log() {
        lane.heartbeat(BOX, Heartbeat.BARE);
        long lines = count("log_line");
        Instant due = due();

        lane.heartbeat(BOX, Heartbeat.BARE);
        lane.heartbeat(BOX, Heartbeat.BARE);

        assertThat(count("log_line")).isEqualTo(lines);
        assertThat(count("box_watch")).isEqualTo(1);
        assertThat(due()).isEqualTo(due);
    }

    @Test
    void turns_away_a_box_that_is_not_set_up() {
        assertThatThrownBy(() -> lane.heartbeat("nobody", Heartbeat.BARE)).isInstanceOf(UnknownBox.class);
        assertThatThrownBy(() -> lane.events("nobody", List.of(active(Fixtures.TANK)), false))
                .isInstanceOf(UnknownBox.class);
        assertThat(count("event")).isZero();
    }

    @Test
    void finishes_what_is_in_the_queue_before_it_stops() {
        List<CompletableFuture<List<Answer.Result>>> handed = new ArrayList<>();
        keepingTheWriterOut(() -> {
            handed.add(later(() -> lane.events(BOX, List.of(), false)));
            await().until(() -> batches() >= 2 && queued() == 0);
            for (int i = 0; i < 20; i++) {
                handed.add(later(() -> lane.events(BOX, List.of(active(Fixtures.TANK)), false)));
            }
            await().until(() -> queued() == 20);
            new Thread(gateway::close).start();
        });

        assertThat(handed.subList(1, 21))
                .allSatisfy(one -> assertThat(one.join()).hasSize(1));
    }

    private Instant due() {
        return gateway.jdbc()
                .queryForObject(
                        "select due_at from due where kind = 'box'",
                        (rows, n) -> rows.getTimestamp(1).toInstant());
    }

    private List<List<Answer.Result>> inOneBatch(Posting... postings) {
        return handed(postings).stream().map(CompletableFuture::join).toList();
    }

    /** Something that waits for the lane. */
    @FunctionalInterface
    private interface Posting {
        List<Answer.Result> post();
    }

    /** Keeps the writer out until all of them are in the queue, so that they become one batch. */
    private List<CompletableFuture<List<Answer.Result>>> handed(Posting... postings) {
        var handed = new ArrayList<CompletableFuture<List<Answer.Result>>>();
        keepingTheWriterOut(() -> {
            handed.add(later(() -> lane.events(BOX, List.of(), false)));
            await().until(() -> batches() >= 2 && queued() == 0);
            for (Posting posting : postings) {
                handed.add(later(posting));
                await().until(() -> queued() == handed.size() - 1);
            }
        });
        return handed.subList(1, handed.size());
    }

    private static CompletableFuture<List<Answer.Result>> later(Posting posting) {
        return CompletableFuture.supplyAsync(posting::post, work -> new Thread(work).start());
    }

    private void keepingTheWriterOut(Runnable work) {
        try (var other = new Journal(gateway.source());
                Writing blocking = other.begin()) {
            assertThat(blocking.setupVersion()).isPositive();
            work.run();
        }
    }

    private double queued() {
        return gateway.meters().get("yardlight.lane.queue").gauge().value();
    }

    /** Batches that were begun; the first one brought the setup. */
    private long batches() {
        return gateway.meters().get("yardlight.lane.batch").summary().count();
    }

    private Outcome outcome(PostedEvent event) {
        return lane.events(BOX, List.of(event), true).get(0).outcome();
    }

    private long count(String what) {
        return gateway.jdbc().queryForObject("select count(*) from " + what, Long.class);
    }
}
