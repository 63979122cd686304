package yardlight.gateway.dispatch;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.channels.FakeChannel;
import yardlight.db.figures.Figures;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;

/** A sending without a database or a lane behind it. */
final class Workbench {

    final FakeChannel texts = FakeChannel.named("sms-mail");
    final FakeOutbox outbox = new FakeOutbox();
    final FakeIntake intake = new FakeIntake();
    volatile Instant now = Instant.parse("2026-11-25T08:13:00Z");

    final Sending sending = sending();

    private Sending sending() {
        var channels = Channels.of(List.of(texts));
        return new Sending(
                channels,
                new Carriers(channels.byName().keySet(), intake, Set::of, () -> now),
                new Lines(Fixtures::theSetup),
                ReceiptTimes.NONE,
                Notice::text,
                outbox,
                new Recorder(intake, outbox),
                () -> now,
                new DispatchMeters(
                        new SimpleMeterRegistry(), () -> new Figures.Waiting(0, Optional.empty()), () -> now));
    }

    /** A notice to Ana that got into the outbox so long ago. */
    Outgoing outgoing(String id, int secondsAgo) {
        Instant at = now.minusSeconds(secondsAgo);
        var notice = new Notice(
                id,
                "ana",
                List.of("c-1"),
                Priority.HIGH,
                "MESA 9 WATER TANK HIGH-HIGH",
                NoticeState.QUEUED,
                at,
                Optional.empty(),
                Optional.empty(),
                0);
        return new Outgoing(notice, "sms-mail", at, 0, 0);
    }
}
