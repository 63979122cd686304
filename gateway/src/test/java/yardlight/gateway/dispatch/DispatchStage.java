package yardlight.gateway.dispatch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.FakeChannel;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;
import yardlight.gateway.lane.PostedEvent;

/** Lane and dispatcher on a real database, with two channels that do as they are told; Ana has a line on each. */
abstract class DispatchStage {

    private static final String BOX = "mesa-9-box";

    final FakeChannel texts = FakeChannel.named("sms-mail");
    final FakeChannel mail = FakeChannel.named("mail");
    SmallGateway gateway;
    private String url;

    abstract TestDatabase database();

    /** So many of its seconds pass in one, so that nobody waits real minutes. */
    abstract double speed();

    final void start(Channel... channels) {
        url = url == null ? database().newUrl() : url;
        gateway = new SmallGateway(
                new SmallGateway.Place(database(), url, speed()),
                withoutHeartbeats(),
                List.of(channels),
                "lane",
                "due",
                "dispatch");
    }

    /** Hours pass in minutes here, and a box that says nothing for minutes would be missed. */
    private static Setup withoutHeartbeats() {
        Setup setup = Fixtures.theSetup();
        var box = new Box(BOX, "mesa-9", Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO);
        return new Setup(
                List.copyOf(setup.sites().values()),
                List.of(box),
                setup.points(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values()));
    }

    @AfterEach
    final void stop() {
        gateway.close();
    }

    static Attempt hold(CountDownLatch until) {
        try {
            until.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Attempt.accepted("250 taken");
    }

    final void alarm() {
        alarm("water-tank");
    }

    final void alarm(String point) {
        var key = new AlarmKey("mesa-9", point, "high-high");
        var report = new Report(
                key, Optional.of(BOX), true, Optional.of(Priority.CRITICAL), Measured.NOTHING, Instant.now(), false);
        gateway.lane().events(BOX, List.of(new PostedEvent(Optional.empty(), report)), false);
    }

    final List<String> noticeStates() {
        return gateway.jdbc().queryForList("select state from notice order by queued_at, id", String.class);
    }

    final String noticeId() {
        return gateway.jdbc().queryForObject("select id from notice", String.class);
    }

    final List<String> attempts() {
        return gateway.jdbc()
                .queryForList(
                        "select channel || ' ' || outcome || ' ' || detail from attempt order by number", String.class);
    }

    final long count(String what) {
        return gateway.jdbc().queryForObject("select count(*) from " + what, Long.class);
    }
}
