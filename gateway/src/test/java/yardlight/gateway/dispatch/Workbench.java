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
import yardlight.gateway.picture.Pictures;

/** A sending without a database or a lane behind it. */
final class Workbench {

    final FakeChannel texts = FakeChannel.named("sms-mail");
    final FakeChannel mails = FakeChannel.named("mail");
    final FakeOutbox outbox = new FakeOutbox();
    final FakeIntake intake = new FakeIntake();
    volatile Pictures pictures = Pictures.NONE;
    volatile Instant now = Instant.parse("2026-11-25T08:13:00Z");

    final Sending sending = sending();

    private Sending sending() {
        var channels = Channels.of(List.of(texts, mails));
        return new Sending(
                channels,
                new Carriers(channels.byName().keySet(), intake, Set::of, () -> now),
                new Lines(Fixtures::theSetup),
                ReceiptTimes.NONE,
                Notice::text,
                notice -> pictures.of(notice),
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

    /** A notice to Ana by her second line. */
    Outgoing mail(String id) {
        var notice = new Notice(
                id,
                "ana",
                List.of("c-1"),
                Priority.HIGH,
                "MESA 9 WATER TANK HIGH-HIGH",
                NoticeState.QUEUED,
                now,
                Optional.empty(),
                Optional.empty(),
                1);
        return new Outgoing(notice, "mail", now, 0, 0);
    }
}
