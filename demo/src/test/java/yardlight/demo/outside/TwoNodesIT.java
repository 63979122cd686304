package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two packaged gateways on one PostgreSQL, and boxes that go to whichever answers. What two of them do with each other in
 * one process, and how the log is numbered, is looked at in the gateway's own TwoGatewaysIT, from inside and much faster.
 */
class TwoNodesIT {

    private static final int PLACES = 40;
    /** So many texts a gateway hands to one carrier at a time; with one more, both are at it. */
    private static final int MOST_OF_ONE = 4;

    private static final Duration PATIENCE = Duration.ofSeconds(90);

    @TempDir
    private Path homes;

    private final Inbox inbox = Inbox.quick();
    private final Inbox stuck = Inbox.stuck();
    private Map<String, String> store;
    private Node one;
    private Node two;
    private Fleet fleet;

    @BeforeEach
    void prepare() throws Exception {
        store = Store.POSTGRESQL.anew();
        two = new Node(homes.resolve("two"), store, inbox);
        two.start();
        two.awaitReady();
        two.owner().putSetup(new Places(PLACES, Duration.ofMinutes(15)).document());
    }

    @AfterEach
    void stop() {
        fleet.end();
        one.close();
        two.close();
        stuck.close();
        inbox.close();
    }

    /** The carrier of the one is stuck, so that it has claims to leave behind; the other one's is not. */
    @Test
    void texts_go_on_within_five_seconds_when_one_is_killed_and_not_before() throws Exception {
        bothWith(stuck);
        fleet.allow(PLACES / 2);
        await().atMost(PATIENCE).until(() -> fleet.begun() == PLACES / 2 && told() + claimedByOne() == PLACES / 2);
        assertThat(held()).as("texts in the hand of the one that will die").isPositive();

        leaveAlone(Duration.ofSeconds(7));
        List<Integer> left = places(PLACES / 2)
                .filter(place -> inbox.texts(Places.first(place)) == 0)
                .boxed()
                .toList();
        assertThat(left)
                .as("what the other one did not take over from one that lives")
                .hasSize(held());

        awaitRenewal();
        long killed = System.nanoTime();
        one.kill();
        fleet.killed();
        fleet.allow(PLACES / 2);

        await().atMost(PATIENCE).until(() -> told() == PLACES);
        long last = left.stream()
                .mapToLong(place -> inbox.taken(Places.first(place)).get(0))
                .max()
                .orElseThrow();
        long millis = TimeUnit.NANOSECONDS.toMillis(last - killed);
        System.out.println("TAKEN OVER: " + left.size() + " texts, the last one " + millis + " ms after the kill");
        assertThat(millis).isLessThan(5000);
        fleet.awaitAnswers();
        counted(two, 2);
    }

    @Test
    void a_rolling_restart_under_load_loses_nothing_and_doubles_nothing() throws Exception {
        bothWith(inbox);
        inbox.takesItsTime(Duration.ofMillis(800));
        for (Node node : List.of(one, two)) {
            fleet.allow(PLACES / 4);
            await().pollInterval(Duration.ofMillis(5)).atMost(PATIENCE).until(() -> inbox.inHand() > MOST_OF_ONE);
            node.stop();
            fleet.allow(PLACES / 4);
            node.start();
            node.awaitReady();
        }
        await().atMost(PATIENCE).until(() -> fleet.begun() == PLACES);
        fleet.awaitAnswers();

        await().atMost(PATIENCE).until(() -> told() == PLACES);
        counted(one, 1);
        counted(two, 1);
    }

    @Test
    void a_setup_and_a_key_stored_at_one_are_followed_at_the_other() throws Exception {
        bothWith(inbox);
        one.owner().putSetup(new Places(PLACES + 1, Duration.ofMinutes(15)).document());
        String key = one.owner().newKey(Places.box(PLACES));

        String event = "{\"id\":\"first\",\"point\":\"tank\",\"condition\":\"high\",\"state\":\"active\"}";
        await().atMost(Duration.ofSeconds(10)).until(() -> Http.event(two.port(), key, event) == 202);

        await().atMost(PATIENCE).until(() -> inbox.texts(Places.first(PLACES)) == 1);
    }

    private void bothWith(Inbox carrier) throws IOException, InterruptedException {
        one = new Node(homes.resolve("one"), store, carrier);
        one.start();
        one.awaitReady();
        List<String> keys = IntStream.range(0, PLACES)
                .mapToObj(Places::box)
                .map(two.owner()::newKey)
                .toList();
        fleet = new Fleet(List.of(one.port(), two.port()), keys, 1);
    }

    private static IntStream places(int count) {
        return IntStream.range(0, count);
    }

    /** How many places somebody was texted for who really got it. */
    private int told() {
        return (int) places(PLACES)
                .filter(place -> inbox.texts(Places.first(place)) > 0)
                .count();
    }

    /** How many are in the hand of the one whose carrier is stuck. */
    private int held() throws IOException, InterruptedException {
        return (int) Seen.all(two.port()).values().stream()
                .filter(seen -> !seen.told())
                .count();
    }

    /** How many texts wait when all of them are in one hand, which can only be that of the stuck one; -1 before. */
    private int claimedByOne() throws SQLException {
        return Integer.parseInt(Store.ask(store, """
                        select case when count(distinct claimed_by) = 1 and count(claimed_by) = count(*) then count(*) else -1 end
                        from outbox
                        """).get(0));
    }

    /** Just renewed, a claim is as far from its end as it ever is: nobody waits longer for one whose owner has died. */
    private void awaitRenewal() throws SQLException {
        String ends = "select max(leased_until) from outbox";
        List<String> before = Store.ask(store, ends);
        await().pollInterval(Duration.ofMillis(20))
                .atMost(PATIENCE)
                .until(() -> !Store.ask(store, ends).equals(before));
    }

    /** Nothing is waited for but that it stays as it is. */
    private void leaveAlone(Duration time) {
        int before = told();
        await().during(time).atMost(time.plusSeconds(30)).until(() -> told() == before);
    }

    private void counted(Node node, int mostTexts) throws IOException, InterruptedException {
        await().atMost(PATIENCE)
                .until(() -> Seen.all(node.port()).values().stream().allMatch(Seen::told));
        Map<String, Seen> seen = Seen.all(node.port());
        assertThat(fleet.wrong()).isEmpty();
        assertThat(seen).hasSize(PLACES);
        for (int place = 0; place < PLACES; place++) {
            assertThat(seen.get(Places.site(place)).events())
                    .as(Places.site(place))
                    .isEqualTo(fleet.answered(place));
            assertThat(inbox.texts(Places.first(place))).as(Places.site(place)).isBetween(1, mostTexts);
        }
    }
}
