package yardlight.gateway.edits;

import java.util.List;
import yardlight.gateway.edit.History;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Clockface;

/**
 * One edit in words.
 *
 * @param more how many more things it changed than are listed
 * @param first whether there is nothing before it that could be brought back
 */
record EditRow(int version, String when, String by, List<Thing> things, int more, boolean first) {

    /** More of them make no page that anybody reads. */
    private static final int MOST = 20;

    /** One thing that was changed. */
    record Thing(String name, List<String> differences) {

        static List<Thing> of(List<Saved.Changed> changes, Telling telling) {
            return changes.stream()
                    .map(change -> new Thing(telling.name(change), telling.differences(change)))
                    .toList();
        }
    }

    static EditRow of(History.Edit edit, Telling telling, Clockface clock) {
        int listed = Math.min(MOST, edit.changes().size());
        return new EditRow(
                edit.version(),
                clock.read(edit.at()),
                edit.by(),
                Thing.of(edit.changes().subList(0, listed), telling),
                edit.changes().size() - listed,
                edit.version() == 1);
    }
}
