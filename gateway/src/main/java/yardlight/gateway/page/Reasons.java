package yardlight.gateway.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.sentence.Sentence;

/** The text of an alarm as somebody reads it: why a silence is taken for what it is, in their language. */
public final class Reasons {

    private static final String BETWEEN = "; ";

    private Reasons() {}

    /** What is no reason of ours, such as a box's own words, stays as it is. */
    public static String of(String text, Tongue tongue) {
        var said = new ArrayList<String>();
        for (String reason : List.of(text.split(BETWEEN))) {
            Optional<Sentence> read = Evidence.read(reason);
            if (read.isEmpty()) {
                return text;
            }
            said.add(tongue.say(read.get()));
        }
        return String.join(BETWEEN, said);
    }
}
