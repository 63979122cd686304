package yardlight.gateway.account;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.log.AlarmSpan;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.page.Telling;

/** Reads what happened to one occurrence of an alarm: a handful of queries, however long the log is. */
@Component
public class Accounts {

    /** The newest lines of its log; an alarm that chatters for weeks has more. */
    private static final int MOST = 300;

    /** A delay takes this long at most, and its report stands in the log before the alarm. */
    private static final Duration LONGEST_DELAY = Duration.ofDays(1);

    private static final int LITTLE = 60;

    private final Alarms alarms;
    private final LogLines log;
    private final InstantSource clock;

    Accounts(Alarms alarms, LogLines log, InstantSource clock) {
        this.alarms = alarms;
        this.log = log;
        this.clock = clock;
    }

    /** Oldest first. */
    public List<Moment> of(RecordedAlarm recorded, Telling telling) {
        Alarm alarm = recorded.alarm();
        Instant began = Stream.of(alarm.occurredAt(), alarm.receivedAt())
                .flatMap(Optional::stream)
                .min(Instant::compareTo)
                .orElse(clock.instant());
        List<LogLine> lines = log.about(
                new AlarmSpan(
                        alarm.key().site(),
                        alarm.id(),
                        alarm.key().local(),
                        alarm.callout(),
                        began.minus(LONGEST_DELAY),
                        next(alarm).flatMap(Alarm::receivedAt).map(at -> at.plusSeconds(LITTLE))),
                MOST);
        return new Story(telling).of(alarm, lines, callouts(recorded, lines));
    }

    private Optional<Alarm> next(Alarm alarm) {
        return alarms.byId(
                        alarm.draft().occurrence(alarm.occurrence() + 1).done().id())
                .map(RecordedAlarm::alarm);
    }

    /** Its newest callout, and those before it of which its log tells. */
    private List<RecordedCallout> callouts(RecordedAlarm recorded, List<LogLine> lines) {
        var others = new LinkedHashSet<String>();
        lines.forEach(line -> Optional.ofNullable(line.about().get("callout"))
                .filter(id -> recorded.alarm().callout().filter(id::equals).isEmpty())
                .ifPresent(others::add));
        return Stream.concat(recorded.callout().stream(), alarms.callouts(others).stream())
                .toList();
    }
}
