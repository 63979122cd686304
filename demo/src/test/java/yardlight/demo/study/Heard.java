package yardlight.demo.study;

import java.time.Duration;
import java.util.List;
import yardlight.escalation.alarm.AlarmKey;

/**
 * A text that called somebody.
 *
 * @param at since the lease began
 * @param alarms what it was about, as {@code point/condition}
 */
record Heard(Duration at, List<AlarmKey> alarms, String words) {

    Heard {
        alarms = List.copyOf(alarms);
    }

    /** The alarm that it began with. */
    String first() {
        return alarms.get(0).local();
    }
}
