package yardlight.escalation.wording;

import java.util.List;
import yardlight.escalation.setup.Language;

/** Writes the text of a notice. */
public final class Wording {

    private Wording() {}

    /** The text about these alarms, worst first; one segment whatever the names. */
    public static String text(List<Subject> subjects, Answering answering, Language language) {
        Subject first = subjects.get(0);
        return first.site().name() + " " + first.point().name() + " "
                + first.alarm().key().condition();
    }
}
