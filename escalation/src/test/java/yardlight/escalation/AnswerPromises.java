package yardlight.escalation;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.rehearsal.Happening;

/** What must hold of answers on every night. */
final class AnswerPromises {

    private AnswerPromises() {}

    static void hold(RandomNight night) {
        Map<String, Instant> answered = new HashMap<>();
        for (Happening step : night.happenings()) {
            for (Notice notice : night.called(step)) {
                if (notice.callouts().stream().allMatch(answered::containsKey)) {
                    throw new AssertionError("nothing is sent once it is answered: " + notice);
                }
            }
            for (Callout callout : step.decision().changes().callouts()) {
                if (callout.kind() == Callout.Kind.ANSWERED) {
                    answered.put(callout.id(), step.at());
                }
            }
        }
    }
}
