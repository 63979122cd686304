package yardlight.gateway.ladders;

import java.util.List;
import java.util.Optional;

/**
 * Past nights as they were, beside what they would have been with a ladder.
 *
 * @param days how many the time has
 * @param sites names of those that have the ladder, or would have it
 * @param why nothing was played; empty when it was
 * @param figures of the whole time
 * @param people what it took from each of them
 * @param nights those in which anybody was called, the newest first
 * @param night the one that is shown; empty when there is none
 */
record NightsSheet(
        LadderForm form,
        Ask ask,
        int days,
        String sites,
        String why,
        List<Figure> figures,
        List<Figure> people,
        List<Choice> nights,
        Optional<Night> night) {

    /**
     * One number on both sides.
     *
     * @param differs whether they are not the same
     */
    record Figure(String name, String really, String would, boolean differs) {

        static Figure of(String name, Object really, Object would) {
            return new Figure(name, really.toString(), would.toString(), !really.equals(would));
        }
    }

    /** A night to choose. */
    record Choice(String value, String label, boolean chosen) {}

    /** One night on both sides. */
    record Night(String title, Side really, Side would) {}

    /**
     * One of them.
     *
     * @param summary in one line
     */
    record Side(String summary, List<Row> rows) {}

    /**
     * One thing that happened.
     *
     * @param alarm whether it is an alarm, and not what people were told of it
     */
    record Row(String time, String words, boolean alarm) {}
}
