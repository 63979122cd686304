package yardlight.gateway.board;

import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.ladder.Callout;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;

/** How alarms, calls and notices stand, in words for people. A table from states to words, and nothing else. */
final class Standing {

    private Standing() {}

    static String of(AlarmState state, String by, String until) {
        return switch (state) {
            case NORMAL -> "Not yet: the delay runs";
            case UNACKNOWLEDGED -> "Nobody has it";
            case RETURNED_UNACKNOWLEDGED -> "Over, nobody had it";
            case LATCHED_UNACKNOWLEDGED -> "Over, nobody had it, waits to be reset";
            case ACKNOWLEDGED -> by + " has it";
            case LATCHED_ACKNOWLEDGED -> "Over, waits to be reset";
            case SHELVED -> "Shelved until " + until;
            case SUPPRESSED_BY_DESIGN -> "Suppressed by design";
            case OUT_OF_SERVICE -> "Out of service";
        };
    }

    static String next(RecordedCallout recorded, Clockface clock, Names names) {
        Callout callout = recorded.callout();
        String place = "rung " + (callout.place().rung() + 1) + ", round "
                + (callout.place().round() + 1);
        return switch (callout.kind()) {
            case CALLING -> "Called " + place + "; goes on at " + due(callout, clock);
            case HELD -> "Nobody left can be called now; goes on at " + due(callout, clock);
            case ANSWERED -> "Answered by " + names.contact(((Callout.Answered) callout).by());
            case ENDED -> "No more calls: " + ((Callout.Ended) callout).reason();
            case EXHAUSTED -> "The whole ladder was climbed and nobody answered";
        };
    }

    private static String due(Callout callout, Clockface clock) {
        return callout.dueAt().map(clock::read).orElse("");
    }

    static String of(RecordedNotice recorded, Clockface clock) {
        String way = recorded.channel().map(channel -> " by " + channel).orElse("");
        String queued = clock.read(recorded.notice().queuedAt());
        return switch (recorded.notice().state()) {
            case QUEUED -> "being sent" + way + " since " + queued;
            case HELD ->
                "held until " + recorded.notice().heldUntil().map(clock::read).orElse("later");
            case BUNDLED -> "told together with others";
            case HANDED_OVER ->
                "sent" + way + " " + recorded.handedOverAt().map(clock::read).orElse(queued);
            case DELIVERED ->
                "arrived" + way + " " + recorded.deliveredAt().map(clock::read).orElse(queued);
            case REFUSED -> "could not be reached, tried since " + queued;
            case CANCELLED -> "not told: it was over";
        };
    }
}
