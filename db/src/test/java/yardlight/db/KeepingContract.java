package yardlight.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.context.ConfigurableApplicationContext;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.db.boxkey.SignedPosts;
import yardlight.db.link.AnswerLinks;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.db.secret.Secrets;
import yardlight.db.setup.SetupVersions;

/** The things that are kept beside the record, on every database. The tables must be those that the entities expect. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class KeepingContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private ConfigurableApplicationContext context;

    abstract TestDatabase database();

    @BeforeAll
    void start() {
        context = DbApplication.on(database());
    }

    @AfterAll
    void stop() {
        context.close();
    }

    @Test
    void secrets_follow_each_other_and_those_that_are_of_no_use_any_more_are_forgotten() {
        Secrets secrets = context.getBean(Secrets.class);
        secrets.get("gate", () -> new byte[] {1}, NOW);
        secrets.get("gates", () -> new byte[] {9}, NOW);

        secrets.add("gate", new byte[] {2}, NOW.plusSeconds(60));
        secrets.add("gate", new byte[] {3}, NOW.plusSeconds(120));
        assertThat(secrets.generations("gate"))
                .extracting(one -> one.content()[0])
                .containsExactly((byte) 1, (byte) 2, (byte) 3);
        assertThat(secrets.generations("gate").get(1).from()).isEqualTo(NOW.plusSeconds(60));

        secrets.forgetFollowedBefore("gate", NOW.plusSeconds(61));
        assertThat(secrets.generations("gate"))
                .extracting(one -> one.content()[0])
                .containsExactly((byte) 2, (byte) 3);

        secrets.replace("gate", new byte[] {4}, NOW.plusSeconds(120));
        assertThat(secrets.generations("gate"))
                .extracting(one -> one.content()[0])
                .containsExactly((byte) 4);
        assertThat(secrets.generations("gates")).hasSize(1);
    }

    @Test
    void people_are_kept_and_replaced_by_login() {
        People people = context.getBean(People.class);

        people.keep(new Person("owner", "{x}one", Role.OWNER), NOW);
        people.keep(new Person("owner", "{x}two", Role.OWNER), NOW);
        boolean added = people.keepIfNew(new Person("owner", "{x}three", Role.OWNER), NOW, Assertions::fail);

        assertThat(added).isFalse();
        assertThat(people.byLogin("owner")).contains(new Person("owner", "{x}two", Role.OWNER));
        assertThat(people.byLogin("nobody")).isEmpty();
        assertThat(people.all()).hasSize(1);
    }

    /** Told behind its back, the first password of the owner could be kept and never seen. */
    @Test
    void a_person_is_not_kept_when_that_could_not_be_said_before() {
        People people = context.getBean(People.class);
        var ana = new Person("ana", "{x}one", Role.HAND);

        assertThatThrownBy(() -> people.keepIfNew(ana, NOW, () -> {
                    throw new UnsupportedOperationException("killed here");
                }))
                .isInstanceOf(UnsupportedOperationException.class);

        assertThat(people.byLogin("ana")).isEmpty();
    }

    @Test
    void a_box_key_is_found_by_its_hash_and_revoked_once() {
        BoxKeys keys = context.getBean(BoxKeys.class);
        BoxKey key = BoxKey.made("k-1", "mesa-9-box", "a".repeat(64), NOW);
        keys.add(key);

        assertThat(keys.byHash("a".repeat(64))).contains(key);
        assertThat(keys.revoke("other-box", "k-1", NOW)).isFalse();
        assertThat(keys.revoke("mesa-9-box", "k-1", NOW.plusSeconds(1))).isTrue();
        assertThat(keys.revoke("mesa-9-box", "k-1", NOW.plusSeconds(2))).isFalse();
        assertThat(keys.of("mesa-9-box"))
                .extracting(BoxKey::revokedAt)
                .containsExactly(Optional.of(NOW.plusSeconds(1)));
    }

    @Test
    void a_box_key_in_place_of_others_lets_them_end_and_none_of_them_later_than_it_would_have() {
        BoxKeys keys = context.getBean(BoxKeys.class);
        keys.add(BoxKey.made("r-1", "loma-4-box", "b".repeat(64), NOW));
        keys.addInPlaceOfOthers(BoxKey.made("r-2", "loma-4-box", "c".repeat(64), NOW), NOW.plusSeconds(60));
        keys.addInPlaceOfOthers(BoxKey.made("r-3", "loma-4-box", "d".repeat(64), NOW), NOW.plusSeconds(90));

        assertThat(keys.of("loma-4-box"))
                .extracting(BoxKey::endsAt)
                .containsExactlyInAnyOrder(
                        Optional.of(NOW.plusSeconds(60)), Optional.of(NOW.plusSeconds(90)), Optional.empty());
        assertThat(keys.byId("r-1").orElseThrow().goodAt(NOW.plusSeconds(59))).isTrue();
        assertThat(keys.byId("r-1").orElseThrow().goodAt(NOW.plusSeconds(60))).isFalse();
        assertThat(keys.endedSince(NOW.plusSeconds(61))).extracting(BoxKey::id).containsExactly("r-2");
    }

    @Test
    void a_box_key_shows_when_it_was_used_last() {
        BoxKeys keys = context.getBean(BoxKeys.class);
        keys.add(BoxKey.made("u-1", "draw-2-box", "e".repeat(64), NOW));

        keys.used(Map.of("u-1", NOW.plusSeconds(9), "nobody", NOW));
        keys.used(Map.of("u-1", NOW.plusSeconds(5)));

        assertThat(keys.byId("u-1").orElseThrow().usedAt()).contains(NOW.plusSeconds(9));
    }

    @Test
    void box_keys_show_when_they_were_used_last_however_many_were() {
        BoxKeys keys = context.getBean(BoxKeys.class);
        keys.add(BoxKey.made("many-0", "many-box", "0".repeat(64), NOW));
        keys.add(BoxKey.made("many-2500", "many-box", "1".repeat(64), NOW));

        keys.used(
                LongStream.rangeClosed(0, 2500).boxed().collect(Collectors.toMap(i -> "many-" + i, NOW::plusSeconds)));

        assertThat(keys.byId("many-0").orElseThrow().usedAt()).contains(NOW);
        assertThat(keys.byId("many-2500").orElseThrow().usedAt()).contains(NOW.plusSeconds(2500));
    }

    @Test
    void a_signed_post_is_the_first_one_once_until_it_is_forgotten() {
        SignedPosts posts = context.getBean(SignedPosts.class);

        assertThat(posts.isFirst("k", "nonce-01", NOW.plusSeconds(600))).isTrue();
        assertThat(posts.isFirst("k", "nonce-01", NOW.plusSeconds(600))).isFalse();
        assertThat(posts.isFirst("other", "nonce-01", NOW.plusSeconds(600))).isTrue();
        posts.forget(NOW.plusSeconds(599));
        assertThat(posts.isFirst("k", "nonce-01", NOW.plusSeconds(600))).isFalse();
        posts.forget(NOW.plusSeconds(600));
        assertThat(posts.isFirst("k", "nonce-01", NOW.plusSeconds(900))).isTrue();
    }

    @Test
    void a_link_works_once_and_not_after_it_expires() {
        AnswerLinks links = context.getBean(AnswerLinks.class);
        links.keep("hash-1", "n-1", NOW.plusSeconds(60));
        links.keep("hash-1", "n-1", NOW.plusSeconds(90));
        links.keep("hash-2", "n-2", NOW.plusSeconds(60));

        assertThat(links.byHash("hash-1").orElseThrow().expiresAt()).isEqualTo(NOW.plusSeconds(60));
        assertThat(links.use("hash-1", NOW)).isTrue();
        assertThat(links.use("hash-1", NOW)).isFalse();
        assertThat(links.use("hash-2", NOW.plusSeconds(60))).isFalse();
        assertThat(links.use("hash-3", NOW)).isFalse();
    }

    @Test
    void a_link_followed_twice_at_once_is_used_once() {
        AnswerLinks links = context.getBean(AnswerLinks.class);
        links.keep("hash-4", "n-4", NOW.plusSeconds(60));

        List<CompletableFuture<Boolean>> uses = Stream.generate(
                        () -> CompletableFuture.supplyAsync(() -> links.use("hash-4", NOW)))
                .limit(3)
                .toList();

        assertThat(uses.stream().filter(CompletableFuture::join)).hasSize(1);
    }

    @Test
    void a_secret_is_made_once_and_the_same_for_everybody() {
        Secrets secrets = context.getBean(Secrets.class);

        byte[] first = secrets.get("links", () -> "one".getBytes(StandardCharsets.UTF_8), NOW);
        byte[] second = secrets.get("links", () -> "two".getBytes(StandardCharsets.UTF_8), NOW);

        assertThat(second).isEqualTo(first);
        assertThat(new String(first, StandardCharsets.UTF_8)).isEqualTo("one");
    }

    @Test
    void there_is_no_setup_before_the_first_is_stored() {
        assertThat(context.getBean(SetupVersions.class).newest()).isEmpty();
        assertThat(context.getBean(SetupVersions.class).byVersion(1)).isEmpty();
    }
}
