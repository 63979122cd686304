package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;

/**
 * Something that happened to an alarm, as the log tells it. The log says it in the moment in which delays had run out, so that
 * they are not waited for once more when it is played again.
 *
 * @param alarm id of the occurrence
 * @param by contact or login of who did it; empty for what happened by itself
 * @param length of a shelf; zero for everything else
 * @param words why it was shelved; empty for everything else
 */
public record PastDeed(Instant at, AlarmKey key, String alarm, What what, String by, Duration length, String words) {

    /** What can happen to an alarm. */
    public enum What {
        /** Its condition holds, and people are to be called. */
        BEGAN,
        /** Its condition is over. */
        ENDED,
        /** It came to a state in which somebody knows of it already, although nobody did anything then. */
        KNOWN,
        ANSWERED,
        /** Another alarm of the same cause was answered, and this one with it. */
        ANSWERED_WITH,
        SHELVED,
        UNSHELVED,
        RESET
    }

    private static final String ALARM = "alarm";
    private static final String ANSWER = "answer";
    private static final Pattern STATE = Pattern.compile("(\\S+/\\S+) is now ([a-z-]+).*");
    private static final Pattern DEED = Pattern.compile(
            "(\\S+/\\S+) (acknowledged|shelved|unshelved|reset)( with \\S+)? by ([^\\s:,]+)(.*), is now ([a-z-]+)",
            Pattern.DOTALL);
    private static final Pattern SHELF = Pattern.compile(" for (\\S+): (.*)", Pattern.DOTALL);
    private static final Map<String, What> DEEDS = Map.of(
            "acknowledged", What.ANSWERED, "shelved", What.SHELVED, "unshelved", What.UNSHELVED, "reset", What.RESET);

    /**
     * Reads a line of the log.
     *
     * @param what kind of the line, in the words of {@code Entry.What}
     * @param about ids of what it is about
     * @return in order; empty for a line that tells nothing of this
     */
    public static List<PastDeed> read(Instant at, String what, Map<String, String> about, String words) {
        Matcher state = STATE.matcher(words);
        Matcher deed = DEED.matcher(words);
        if (!about.containsKey("site") || !about.containsKey("alarm")) {
            return List.of();
        }
        if (what.equals(ALARM) && state.matches()) {
            return byItself(at, about, state.group(1), state.group(2)).stream().toList();
        }
        return what.equals(ANSWER) && deed.matches() ? done(at, about, deed) : List.of();
    }

    private static Optional<PastDeed> byItself(Instant at, Map<String, String> about, String local, String state) {
        return activity(state(state))
                .map(what -> new PastDeed(
                        at, AlarmKey.at(about.get("site"), local), about.get("alarm"), what, "", Duration.ZERO, ""));
    }

    private static List<PastDeed> done(Instant at, Map<String, String> about, Matcher deed) {
        What what = deed.group(3) == null ? DEEDS.get(deed.group(2)) : What.ANSWERED_WITH;
        Matcher shelf = SHELF.matcher(deed.group(5));
        boolean shelved = what == What.SHELVED && shelf.matches();
        var deeds = new ArrayList<PastDeed>();
        deeds.add(new PastDeed(
                at,
                AlarmKey.at(about.get("site"), deed.group(1)),
                about.get("alarm"),
                what,
                deed.group(4),
                shelved ? Duration.parse(shelf.group(1)) : Duration.ZERO,
                shelved ? shelf.group(2) : ""));
        // Behind a shelf the condition came and went unseen: what is true now is told by its end.
        Stream.of(what)
                .filter(What.UNSHELVED::equals)
                .flatMap(any -> byItself(at, about, deed.group(1), deed.group(6)).stream())
                .forEach(deeds::add);
        return List.copyOf(deeds);
    }

    private static AlarmState state(String word) {
        return AlarmState.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static Optional<What> activity(AlarmState state) {
        return switch (state) {
            case UNACKNOWLEDGED -> Optional.of(What.BEGAN);
            case ACKNOWLEDGED -> Optional.of(What.KNOWN);
            case NORMAL, RETURNED_UNACKNOWLEDGED, LATCHED_UNACKNOWLEDGED, LATCHED_ACKNOWLEDGED ->
                Optional.of(What.ENDED);
            case SHELVED, SUPPRESSED_BY_DESIGN, OUT_OF_SERVICE -> Optional.empty();
        };
    }

    /** Whether it tells of the condition, and not of a person. */
    boolean reported() {
        return what == What.BEGAN || what == What.ENDED;
    }
}
