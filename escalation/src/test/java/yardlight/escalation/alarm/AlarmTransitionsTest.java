package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.AlarmState.ACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.LATCHED_ACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.LATCHED_UNACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.NORMAL;
import static yardlight.escalation.alarm.AlarmState.OUT_OF_SERVICE;
import static yardlight.escalation.alarm.AlarmState.RETURNED_UNACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmState.SHELVED;
import static yardlight.escalation.alarm.AlarmState.SUPPRESSED_BY_DESIGN;
import static yardlight.escalation.alarm.AlarmState.UNACKNOWLEDGED;
import static yardlight.escalation.alarm.AlarmTrigger.ACKNOWLEDGE;
import static yardlight.escalation.alarm.AlarmTrigger.OCCUR;
import static yardlight.escalation.alarm.AlarmTrigger.REALARM;
import static yardlight.escalation.alarm.AlarmTrigger.REMOVE;
import static yardlight.escalation.alarm.AlarmTrigger.RESET;
import static yardlight.escalation.alarm.AlarmTrigger.RESTORE;
import static yardlight.escalation.alarm.AlarmTrigger.RETURN;
import static yardlight.escalation.alarm.AlarmTrigger.SHELVE;
import static yardlight.escalation.alarm.AlarmTrigger.SUPPRESS;
import static yardlight.escalation.alarm.AlarmTrigger.UNSHELVE;
import static yardlight.escalation.alarm.AlarmTrigger.UNSUPPRESS;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.alarm.AlarmTransitions.Facts;

/** The moves of ISA-18.2 (state transition diagram, read at second hand), each by name, and no other. */
class AlarmTransitionsTest {

    private static final Facts PLAIN = new Facts(true, false, false, false, false);
    private static final Facts LATCHING = new Facts(true, false, true, false, false);

    /** All that is allowed, written down once more by hand. */
    private static final Map<AlarmState, Set<AlarmTrigger>> ALLOWED = Map.of(
            NORMAL, EnumSet.of(OCCUR, SHELVE, SUPPRESS, REMOVE),
            UNACKNOWLEDGED, EnumSet.of(ACKNOWLEDGE, RETURN, REALARM, SHELVE, SUPPRESS, REMOVE),
            ACKNOWLEDGED, EnumSet.of(RETURN, REALARM, SHELVE, SUPPRESS, REMOVE),
            RETURNED_UNACKNOWLEDGED, EnumSet.of(ACKNOWLEDGE, OCCUR, SHELVE, SUPPRESS, REMOVE),
            LATCHED_UNACKNOWLEDGED, EnumSet.of(ACKNOWLEDGE, OCCUR, SHELVE, SUPPRESS, REMOVE),
            LATCHED_ACKNOWLEDGED, EnumSet.of(RESET, OCCUR, SHELVE, SUPPRESS, REMOVE),
            SHELVED, EnumSet.of(OCCUR, RETURN, UNSHELVE, REMOVE),
            SUPPRESSED_BY_DESIGN, EnumSet.of(OCCUR, RETURN, UNSUPPRESS, REMOVE),
            OUT_OF_SERVICE, EnumSet.of(OCCUR, RETURN, RESTORE));

    @Test
    void a_normal_alarm_occurs() {
        assertMove(NORMAL, OCCUR, PLAIN, UNACKNOWLEDGED);
    }

    @Test
    void an_alarm_answered_in_the_same_chatter_occurs_as_acknowledged() {
        assertMove(NORMAL, OCCUR, new Facts(true, true, false, false, true), ACKNOWLEDGED);
    }

    @Test
    void an_unacknowledged_alarm_is_acknowledged() {
        assertMove(UNACKNOWLEDGED, ACKNOWLEDGE, PLAIN, ACKNOWLEDGED);
    }

    @Test
    void an_unacknowledged_alarm_returns_and_still_wants_an_answer() {
        assertMove(UNACKNOWLEDGED, RETURN, PLAIN, RETURNED_UNACKNOWLEDGED);
    }

    @Test
    void an_acknowledged_alarm_returns_to_normal() {
        assertMove(ACKNOWLEDGED, RETURN, PLAIN, NORMAL);
    }

    @Test
    void an_acknowledged_alarm_is_called_again() {
        assertMove(ACKNOWLEDGED, REALARM, PLAIN, UNACKNOWLEDGED);
    }

    @Test
    void an_exhausted_alarm_is_called_again() {
        assertMove(UNACKNOWLEDGED, REALARM, PLAIN, UNACKNOWLEDGED);
    }

    @Test
    void a_returned_alarm_is_acknowledged_and_normal() {
        assertMove(RETURNED_UNACKNOWLEDGED, ACKNOWLEDGE, PLAIN, NORMAL);
    }

    @Test
    void a_returned_alarm_that_nobody_answered_occurs_again() {
        assertMove(RETURNED_UNACKNOWLEDGED, OCCUR, PLAIN, UNACKNOWLEDGED);
    }

    @Test
    void a_latching_alarm_stays_in_alarm_when_its_condition_clears() {
        assertMove(UNACKNOWLEDGED, RETURN, LATCHING, LATCHED_UNACKNOWLEDGED);
        assertMove(ACKNOWLEDGED, RETURN, LATCHING, LATCHED_ACKNOWLEDGED);
    }

    @Test
    void a_latched_alarm_is_acknowledged_and_stays_latched() {
        assertMove(LATCHED_UNACKNOWLEDGED, ACKNOWLEDGE, LATCHING, LATCHED_ACKNOWLEDGED);
    }

    @Test
    void a_latched_acknowledged_alarm_is_reset() {
        assertMove(LATCHED_ACKNOWLEDGED, RESET, LATCHING, NORMAL);
    }

    @Test
    void a_latched_alarm_that_occurs_again_wants_a_new_answer() {
        assertMove(LATCHED_ACKNOWLEDGED, OCCUR, LATCHING, UNACKNOWLEDGED);
        assertMove(LATCHED_UNACKNOWLEDGED, OCCUR, LATCHING, UNACKNOWLEDGED);
    }

    @ParameterizedTest
    @EnumSource(
            names = {"SHELVED", "SUPPRESSED_BY_DESIGN", "OUT_OF_SERVICE"},
            mode = EnumSource.Mode.EXCLUDE)
    void any_live_alarm_is_shelved_suppressed_or_removed_from_service(AlarmState live) {
        assertMove(live, SHELVE, PLAIN, SHELVED);
        assertMove(live, SUPPRESS, PLAIN, SUPPRESSED_BY_DESIGN);
        assertMove(live, REMOVE, PLAIN, OUT_OF_SERVICE);
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELVED", "SUPPRESSED_BY_DESIGN", "OUT_OF_SERVICE"})
    void a_withheld_alarm_comes_back_to_the_state_that_its_condition_has_by_then(AlarmState withheld) {
        AlarmTrigger back = back(withheld);

        assertMove(withheld, back, new Facts(true, true, false, false, false), ACKNOWLEDGED);
        assertMove(withheld, back, new Facts(true, false, false, false, false), UNACKNOWLEDGED);
        assertMove(withheld, back, new Facts(false, true, true, true, false), LATCHED_ACKNOWLEDGED);
        assertMove(withheld, back, new Facts(false, false, true, true, false), LATCHED_UNACKNOWLEDGED);
        assertMove(withheld, back, new Facts(false, false, false, false, false), NORMAL);
        assertMove(withheld, back, new Facts(false, true, false, false, false), NORMAL);
    }

    @ParameterizedTest
    @EnumSource(names = {"SHELVED", "SUPPRESSED_BY_DESIGN", "OUT_OF_SERVICE"})
    void a_withheld_alarm_stays_withheld_whatever_its_condition_does(AlarmState withheld) {
        assertMove(withheld, OCCUR, PLAIN, withheld);
        assertMove(withheld, RETURN, PLAIN, withheld);
    }

    @Test
    void a_shelved_or_suppressed_alarm_is_removed_from_service() {
        assertMove(SHELVED, REMOVE, PLAIN, OUT_OF_SERVICE);
        assertMove(SUPPRESSED_BY_DESIGN, REMOVE, PLAIN, OUT_OF_SERVICE);
    }

    @ParameterizedTest
    @EnumSource
    void everything_else_is_refused(AlarmState from) {
        for (AlarmTrigger trigger : EnumSet.complementOf(EnumSet.copyOf(ALLOWED.get(from)))) {
            for (Facts facts : allFacts()) {
                assertThat(AlarmTransitions.next(from, trigger, facts))
                        .as("%s, %s, %s", from, trigger, facts)
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void what_is_allowed_is_allowed_whatever_the_facts(AlarmState from) {
        for (AlarmTrigger trigger : ALLOWED.get(from)) {
            for (Facts facts : allFacts()) {
                assertThat(AlarmTransitions.next(from, trigger, facts))
                        .as("%s, %s, %s", from, trigger, facts)
                        .isPresent();
            }
        }
    }

    private static void assertMove(AlarmState from, AlarmTrigger trigger, Facts facts, AlarmState to) {
        assertThat(AlarmTransitions.next(from, trigger, facts)).contains(to);
    }

    private static AlarmTrigger back(AlarmState withheld) {
        return Map.of(SHELVED, UNSHELVE, SUPPRESSED_BY_DESIGN, UNSUPPRESS, OUT_OF_SERVICE, RESTORE)
                .get(withheld);
    }

    private static List<Facts> allFacts() {
        var all = new ArrayList<Facts>();
        for (int bits = 0; bits < 32; bits++) {
            all.add(new Facts((bits & 1) > 0, (bits & 2) > 0, (bits & 4) > 0, (bits & 8) > 0, (bits & 16) > 0));
        }
        return all;
    }
}
