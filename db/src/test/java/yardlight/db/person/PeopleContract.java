package yardlight.db.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.context.ConfigurableApplicationContext;
import yardlight.db.DbApplication;
import yardlight.db.TestDatabase;

/** Who may sign in, on every database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PeopleContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private ConfigurableApplicationContext context;
    private People people;
    private Invitations invitations;
    private Devices devices;
    private Sittings sittings;

    abstract TestDatabase database();

    @BeforeAll
    void start() {
        context = DbApplication.on(database());
        people = context.getBean(People.class);
        invitations = context.getBean(Invitations.class);
        devices = context.getBean(Devices.class);
        sittings = context.getBean(Sittings.class);
    }

    @AfterAll
    void stop() {
        context.close();
    }

    /** Both want the other one out at once; without a lock both would get it. */
    @Test
    void two_owners_that_demote_each_other_leave_one() throws Exception {
        for (int round = 0; round < 10; round++) {
            people.keep(new Person("one", "x", Role.OWNER), NOW);
            people.keep(new Person("two", "x", Role.OWNER), NOW);

            List<Change> changes =
                    atOnce(() -> people.change("one", person -> person.as(Role.READER)), () -> people.remove("two"));

            assertThat(changes).containsExactlyInAnyOrder(Change.DONE, Change.LAST_OWNER);
            assertThat(people.all())
                    .filteredOn(person -> person.role() == Role.OWNER)
                    .hasSize(1);
        }
    }

    @Test
    void a_login_that_nobody_has_is_neither_changed_nor_removed() {
        assertThat(people.change("nobody", person -> person)).isEqualTo(Change.UNKNOWN);
        assertThat(people.remove("nobody")).isEqualTo(Change.UNKNOWN);
    }

    @Test
    void a_removed_login_takes_its_devices_and_sittings_along() {
        people.keep(new Person("sam", "x", Role.HAND), NOW);
        devices.meet(device("sam-1", "sam"));
        sittings.begin(sitting("s-1", "sam"), NOW.minusSeconds(60), NOW.minusSeconds(60));

        assertThat(people.remove("sam")).isEqualTo(Change.DONE);

        assertThat(devices.of("sam")).isEmpty();
        assertThat(sittings.byId("s-1")).isEmpty();
    }

    @Test
    void an_invitation_is_used_by_one_of_several_at_once() throws Exception {
        invitations.add(invitation("i-1", "hash-1"));

        List<Invitations.Use> uses = atOnce(
                () -> invitations.use("hash-1", new Person("quick", "x", Role.HAND), NOW),
                () -> invitations.use("hash-1", new Person("slow", "x", Role.HAND), NOW));

        assertThat(uses).containsExactlyInAnyOrder(Invitations.Use.JOINED, Invitations.Use.GONE);
        assertThat(people.all())
                .filteredOn(person -> List.of("quick", "slow").contains(person.login()))
                .hasSize(1);
    }

    @Test
    void an_invitation_is_still_good_when_the_login_was_taken() {
        invitations.add(invitation("i-2", "hash-2"));
        people.keep(new Person("taken", "x", Role.READER), NOW);

        assertThat(invitations.use("hash-2", new Person("taken", "y", Role.HAND), NOW))
                .isEqualTo(Invitations.Use.TAKEN);
        assertThat(people.byLogin("taken").orElseThrow().role()).isEqualTo(Role.READER);
        assertThat(invitations.use("hash-2", new Person("free", "y", Role.HAND), NOW))
                .isEqualTo(Invitations.Use.JOINED);
        assertThat(invitations.takeBack("i-2")).isFalse();
    }

    @Test
    void the_first_device_of_a_login_is_expected_and_the_next_one_is_new_until_it_was_seen() {
        people.keep(new Person("kim", "x", Role.HAND), NOW);

        assertThat(devices.meet(device("kim-1", "kim"))).isEqualTo(Devices.Met.FIRST);
        assertThat(devices.meet(device("kim-1", "kim"))).isEqualTo(Devices.Met.KNOWN);
        assertThat(devices.meet(device("kim-2", "kim"))).isEqualTo(Devices.Met.NEW);

        assertThat(devices.unseen()).extracting(Device::id).containsExactly("kim-2");
        devices.see(NOW);
        assertThat(devices.anyNew()).isFalse();
        assertThat(devices.cameFrom("kim", "192.0.2.7")).isTrue();
        assertThat(devices.last()).containsEntry("kim", NOW);
    }

    @Test
    void a_sitting_is_there_until_it_ends_or_a_later_one_finds_it_too_old() {
        people.keep(new Person("lou", "x", Role.HAND), NOW);
        Instant old = NOW.minus(Duration.ofHours(1));
        sittings.begin(sitting("l-1", "lou"), old, old);
        sittings.begin(sitting("l-2", "lou"), old, old);

        assertThat(sittings.endOthers("lou", "l-2")).isEqualTo(1);
        assertThat(sittings.byId("l-1")).isEmpty();
        assertThat(sittings.since(old, old)).extracting(Sitting::id).contains("l-2");

        sittings.begin(sitting("l-3", "lou"), NOW, old);
        assertThat(sittings.byId("l-2")).isEmpty();
    }

    private static Invitation invitation(String id, String hash) {
        return new Invitation(
                id, hash, Role.HAND, Optional.empty(), "owner", NOW, NOW.plus(Duration.ofDays(7)), Optional.empty());
    }

    private static Device device(String id, String login) {
        return new Device(id, login, "browser", "192.0.2.7", "Lantern/1.0", NOW, NOW);
    }

    private static Sitting sitting(String id, String login) {
        return new Sitting(id, login, "192.0.2.7", "Lantern/1.0", NOW, NOW);
    }

    private static <T> List<T> atOnce(Callable<T> one, Callable<T> other) throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            Future<T> first = both.submit(one);
            Future<T> second = both.submit(other);
            return List.of(first.get(), second.get());
        } finally {
            both.shutdown();
        }
    }
}
