package yardlight.db.alarm;

import java.util.Optional;
import yardlight.escalation.alarm.Alarm;

/** One occurrence of an alarm with what was done about it. */
public record RecordedAlarm(Alarm alarm, Optional<RecordedCallout> callout) {}
