package yardlight.gateway.story;

import yardlight.gateway.alarms.Notes;
import yardlight.gateway.page.Tongue;

/** A reason or a note, as somebody typed it: one line that says something. */
final class Sentences {

    private Sentences() {}

    static String of(String typed) {
        return typed.replaceAll("\\s+", " ")
                .replaceAll("\\p{Cntrl}|\\p{Cs}", "")
                .strip();
    }

    /** What is wrong with it; empty when nothing is. */
    static String wrong(String typed, Tongue tongue) {
        String line = of(typed);
        if (line.isEmpty()) {
            return tongue.say("story.wrong.empty");
        }
        return line.codePointCount(0, line.length()) > Notes.LONGEST ? tongue.say("story.wrong.long") : "";
    }
}
