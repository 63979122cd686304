package yardlight.escalation;

import java.time.Duration;
import java.util.List;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.shutin.Terms;

/** The alarm that a site was asked to shut in and does not say that it is: for everybody, at once and again. */
public final class ShutInAlarm {

    static final Ladder EVERYONE = new Ladder(
            "everyone",
            Ladder.EndsWhen.ACKNOWLEDGED,
            List.of(new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(5), 3)),
            3);

    private static final String CONDITION = "not-confirmed";

    private ShutInAlarm() {}

    public static AlarmKey at(String site) {
        return new AlarmKey(site, Terms.POINT, CONDITION);
    }

    static boolean is(AlarmKey key) {
        return key.point().equals(Terms.POINT) && key.condition().equals(CONDITION);
    }

    static boolean is(Callout.Facts callout) {
        return callout.alarms().stream().anyMatch(ShutInAlarm::is);
    }
}
