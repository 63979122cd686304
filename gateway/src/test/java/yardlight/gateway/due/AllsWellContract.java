package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static yardlight.escalation.Fixtures.CHICAGO;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** Ana is told at seven that all is well, on every database, with a gateway that may not be there at seven. */
abstract class AllsWellContract {

    private final AtomicReference<Instant> time = new AtomicReference<>(Fixtures.at("2026-11-25T06:59"));
    private final List<FakeChannel> carriers = new ArrayList<>();

    abstract TestDatabase database();

    @Test
    void it_is_sent_at_its_time_and_once() {
        String url = database().newUrl();
        try (SmallGateway gateway = start(url)) {
            it_is("2026-11-25T07:00");
            sent(1);
            gateway.lane().decide(new Stimulus.AllsWellDue("ana"));
            it_is("2026-11-26T07:00");
            sent(2);
        }
        assertThat(texts().get(0).text()).contains("0 in alarm. Wed 7:00 AM.");
        assertThat(texts().get(1).text()).contains("0 in alarm. Thu 7:00 AM.");
        assertThat(texts().get(1).text()).doesNotContain("late");
    }

    @Test
    void missed_while_the_gateway_was_away_it_comes_late_and_says_so() {
        String url = database().newUrl();
        start(url).close();

        it_is("2026-11-25T09:30");
        try (SmallGateway gateway = start(url)) {
            sent(1);
            gateway.store(setup());
        }
        start(url).close();

        assertThat(texts()).hasSize(1);
        assertThat(texts().get(0).text()).contains("Wed 9:30 AM (late, due Wed 7:00 AM)");
    }

    @Test
    void missed_for_longer_it_is_the_next_one_that_comes() {
        String url = database().newUrl();
        start(url).close();

        it_is("2026-11-25T13:00");
        try (SmallGateway gateway = start(url)) {
            await().until(() -> due(gateway).equals(Fixtures.at("2026-11-26T07:00")));
            assertThat(texts()).isEmpty();
            it_is("2026-11-26T07:00");
            sent(1);
        }
        assertThat(texts().get(0).text()).contains("Thu 7:00 AM.");
    }

    @Test
    void who_is_not_to_be_told_any_more_has_nothing_due() {
        try (SmallGateway gateway = start(database().newUrl())) {
            assertThat(rows(gateway)).isEqualTo(1);

            gateway.store(setup(Optional.empty()));

            assertThat(rows(gateway)).isZero();
        }
    }

    void it_is(String local) {
        time.set(Fixtures.at(local));
    }

    void sent(int times) {
        await().atMost(Duration.ofSeconds(15)).until(() -> texts().size() == times);
    }

    /** What went out, by whichever gateway, in order. */
    List<Message> texts() {
        return carriers.stream().flatMap(carrier -> carrier.tried().stream()).toList();
    }

    private static int rows(SmallGateway gateway) {
        return gateway.jdbc().queryForObject("select count(*) from due where kind = 'well'", Integer.class);
    }

    private static Instant due(SmallGateway gateway) {
        return gateway.jdbc()
                .queryForObject(
                        "select due_at from due where kind = 'well'",
                        (rows, n) -> rows.getTimestamp(1).toInstant());
    }

    SmallGateway start(String url) {
        InstantSource clock = time::get;
        FakeChannel texts = FakeChannel.named("sms-mail");
        carriers.add(texts);
        var place = new SmallGateway.Place(database(), url, 1, Optional.of(clock));
        return new SmallGateway(place, setup(), List.of(texts), "lane", "due", "dispatch");
    }

    private static Setup setup() {
        return setup(Optional.of(AllsWell.daily(LocalTime.of(7, 0), CHICAGO)));
    }

    private static Setup setup(Optional<AllsWell> schedule) {
        Contact ana = Fixtures.ana();
        Box box = Fixtures.aBox();
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(new Box(
                        box.id(), box.site(), box.feed(), box.link(), true, Optional.empty(), Duration.ofMinutes(2))),
                List.of(),
                List.of(new Contact("ana", ana.name(), CHICAGO, Language.EN, ana.lines(), ana.quiet(), 20, schedule)),
                List.of(),
                List.of(Fixtures.night()));
    }
}
