package yardlight.gateway.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static yardlight.escalation.Fixtures.at;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.quartz.SchedulerException;
import yardlight.db.TestDatabase;
import yardlight.escalation.Stimulus;

/** A tour that changes hands while nobody looks. */
class HandoverIT {

    private static final Instant BEFORE = at("2026-11-30T06:59");
    private static final Instant AFTER = at("2026-11-30T07:01");
    private static final Stimulus NOTED = new Stimulus.Handover("crew");

    /** PostgreSQL's scheduler has to find out that the one before it is gone: 7.5 s after its last sign of life. */
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    @ParameterizedTest
    @EnumSource
    void a_handover_that_falls_into_a_stop_is_noted_once_after_it(TestDatabase database) {
        String url = database.newUrl();
        try (var stage = new CalendarStage(database, url, BEFORE)) {
            done(stage, 2);
        }

        notedOnce(database, url);
    }

    @ParameterizedTest
    @EnumSource
    void a_handover_is_noted_once_by_the_one_after_a_gateway_that_was_killed(TestDatabase database) throws Exception {
        String url = database.newUrl();

        killed(database, url);

        notedOnce(database, url);
    }

    @Test
    void a_handover_is_noted_by_one_of_two_gateways() {
        TestDatabase database = TestDatabase.POSTGRESQL;
        String url = database.newUrl();
        var one = new CalendarStage(database, url, BEFORE);
        // Both use the pool of the later one, which is therefore closed last.
        try (var other = new CalendarStage(database, url, BEFORE)) {
            handedOver(one, other);
            one.close();
            one.lane().decided.addAll(other.lane().decided);
        }

        assertThat(one.lane().decided).containsExactly(NOTED);
    }

    @Test
    void the_calendar_ends_before_anything_that_its_jobs_need() {
        var stage = new CalendarStage(TestDatabase.H2, TestDatabase.H2.newUrl(), BEFORE);

        stage.close();

        assertThat(stage.endedFirst()).isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void only_a_database_that_several_gateways_can_share_has_a_cluster(TestDatabase database)
            throws SchedulerException {
        try (var stage = new CalendarStage(database, database.newUrl(), BEFORE)) {
            assertThat(stage.clustered()).isEqualTo(database == TestDatabase.POSTGRESQL);
        }
    }

    /** Runs a gateway's calendar in a process of its own, and kills it once it has fired and holds the next time. */
    private static void killed(TestDatabase database, String url) throws Exception {
        Process victim = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        CalendarStage.class.getName(),
                        database.name(),
                        url,
                        BEFORE.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = victim.inputReader()) {
            assertThat(out.lines().anyMatch("done 3"::equals)).as("it fired").isTrue();
        } finally {
            victim.destroyForcibly().waitFor();
        }
    }

    private static void notedOnce(TestDatabase database, String url) {
        try (var stage = new CalendarStage(database, url, AFTER)) {
            done(stage, 3);

            assertThat(stage.lane().decided).containsExactly(NOTED);
        }
    }

    private static void handedOver(CalendarStage one, CalendarStage other) {
        await().atMost(PATIENCE).until(() -> one.done() + other.done() >= 2);
        one.set(AFTER);
        other.set(AFTER);
        int before = one.done() + other.done();
        await().atMost(PATIENCE).until(() -> one.done() + other.done() >= before + 4);
    }

    private static void done(CalendarStage stage, int more) {
        int before = stage.done();
        await().atMost(PATIENCE).until(() -> stage.done() >= before + more);
    }
}
