package yardlight.gateway.lane;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.db.TestDatabase;
import yardlight.db.reading.Slot;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.reading.Reading;
import yardlight.gateway.SmallGateway;

/** A gateway in a process of its own that says which events and readings it has answered, until somebody kills it. */
final class Victim {

    private static final int THREADS = 6;

    private Victim() {}

    public static void main(String[] arguments) {
        SmallGateway gateway = new SmallGateway(TestDatabase.H2, arguments[0], Fixtures.theSetup(), List.of(), "lane");
        var number = new AtomicInteger();
        for (int i = 0; i < THREADS; i++) {
            new Thread(() -> post(gateway.lane(), number)).start();
        }
        new Thread(() -> measure(gateway.lane())).start();
    }

    private static void measure(Lane lane) {
        for (int mine = 1; true; mine++) {
            var reading = new Reading("mesa-9", "level", mine, Slot.FIRST.plusSeconds(mine));
            lane.readings(
                    "mesa-9-box",
                    List.of(new PostedReading(reading, mine, Optional.of("ft"), false)),
                    Slot.FIRST,
                    false);
            System.out.println("r-" + mine);
        }
    }

    private static void post(Lane lane, AtomicInteger number) {
        while (true) {
            int mine = number.incrementAndGet();
            var key = new AlarmKey("mesa-9", "point-" + mine % 7, "high");
            var report = new Report(
                    key,
                    Optional.of("mesa-9-box"),
                    mine % 3 != 0,
                    Optional.empty(),
                    Measured.NOTHING,
                    Instant.now(),
                    false);
            lane.events("mesa-9-box", List.of(new PostedEvent(Optional.of("e-" + mine), report)), false);
            System.out.println("e-" + mine);
        }
    }
}
