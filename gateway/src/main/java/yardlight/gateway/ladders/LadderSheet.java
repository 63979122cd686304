package yardlight.gateway.ladders;

import java.util.List;

/**
 * Everything on the page of one ladder.
 *
 * @param calls whom a rung can call
 * @param places the alarms' sites and points to choose from
 * @param priorities words to choose from
 * @param usedBy the names of the sites that have it
 * @param fresh whether it is not stored yet
 * @param edits its last edits
 */
record LadderSheet(
        LadderForm form,
        Ask ask,
        Mistakes mistakes,
        RehearsalSheet rehearsal,
        List<Choice> calls,
        List<Choice> places,
        List<Choice> priorities,
        List<String> usedBy,
        boolean fresh,
        List<Past> edits) {

    /** One thing to choose. */
    record Choice(String value, String label) {}

    /**
     * An edit that changed it.
     *
     * @param others how many other things it changed
     */
    record Past(int version, String by, String when, List<String> differences, int others, boolean first) {}
}
