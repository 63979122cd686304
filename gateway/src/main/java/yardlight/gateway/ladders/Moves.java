package yardlight.gateway.ladders;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What the buttons at the rungs do: {@code up.3}, {@code down.3}, {@code away.3}, {@code more.3} with the rung's key, and {@code add}. */
final class Moves {

    private Moves() {}

    /** The form after it; unchanged when there is nothing to move. */
    static LadderForm apply(LadderForm form, String move) {
        String[] parts = move.split("\\.", 2);
        List<RungForm> rungs = new ArrayList<>(form.rungs());
        if (parts[0].equals("add")) {
            rungs.add(RungForm.fresh(freeKey(rungs)));
            return form.with(rungs);
        }
        int place = parts.length < 2 ? -1 : place(rungs, parts[1]);
        if (place < 0) {
            return form;
        }
        switch (parts[0]) {
            case "up" -> swap(rungs, place, place - 1);
            case "down" -> swap(rungs, place, place + 1);
            case "away" -> rungs.remove(place);
            case "more" -> rungs.set(place, rungs.get(place).withOneMore());
            default -> {}
        }
        return form.with(rungs);
    }

    private static void swap(List<RungForm> rungs, int place, int other) {
        if (other >= 0 && other < rungs.size()) {
            Collections.swap(rungs, place, other);
        }
    }

    private static int place(List<RungForm> rungs, String key) {
        for (int i = 0; i < rungs.size(); i++) {
            if (rungs.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private static String freeKey(List<RungForm> rungs) {
        int number = 0;
        while (place(rungs, "n" + number) >= 0) {
            number++;
        }
        return "n" + number;
    }
}
