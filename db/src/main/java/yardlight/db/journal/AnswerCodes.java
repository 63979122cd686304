package yardlight.db.journal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;

/**
 * The codes that people answer with. They go round from 10 to 999, so that one comes back only after all others, and
 * leave out what a live callout has. Only when all of those are taken do longer ones come.
 */
final class AnswerCodes {

    private static final int FIRST = 10;
    private static final int LAST = 999;
    private static final int LONGER_AT_ONCE = 500;
    private static final String TAKEN =
            "select live_code from callout where live_code between " + FIRST + " and " + LAST;
    private static final String LONGEST = "select max(live_code) as live_code from callout where live_code > 0";

    private final Pen pen;
    private final Deque<Integer> free = new ArrayDeque<>();
    private int last;

    /**
     * @param last the code that was given out last
     */
    AnswerCodes(Pen pen, int last) {
        this.pen = pen;
        this.last = last;
    }

    int next() {
        if (free.isEmpty()) {
            fill();
        }
        int code = free.remove();
        last = code <= LAST ? code : last;
        return code;
    }

    int last() {
        return last;
    }

    private void fill() {
        Set<Integer> taken = new HashSet<>(pen.read(TAKEN, (statement, none) -> {}, row -> row.number("live_code")));
        int code = last;
        for (int i = FIRST; i <= LAST; i++) {
            code = code >= LAST ? FIRST : code + 1;
            if (!taken.contains(code)) {
                free.add(code);
            }
        }
        if (free.isEmpty()) {
            int longest = pen.read(LONGEST, (statement, none) -> {}, row -> row.number("live_code"))
                    .get(0);
            for (int i = 1; i <= LONGER_AT_ONCE; i++) {
                free.add(longest + i);
            }
        }
    }
}
