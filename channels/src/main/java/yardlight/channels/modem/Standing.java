package yardlight.channels.modem;

import java.util.Optional;

/**
 * How a modem stands with its network.
 *
 * @param complaint why it could send nothing now; empty if it could
 * @param signal for a person, as {@code the modem hears its network at -97 dBm}; empty if it does not say
 */
record Standing(Optional<String> complaint, String signal) {

    /** Before anybody asked. */
    static final Standing UNKNOWN = new Standing(Optional.empty(), "");

    /** The values of {@code +CSQ} (TS 27.007 clause 8.5): steps of 2 dB, both ends open, 99 for not known. */
    private static final int LEAST = -113;

    private static final int STEP = 2;
    private static final int MOST = 31;
    /** Common practice, no source: below it texts are lost. */
    private static final int WEAK = -105;

    /** Asks whether it is registered, with the network for calls or with that of LTE, and how strong the signal is. */
    static Standing of(Dialogue dialogue) throws Gone {
        Optional<String> calls = missing(dialogue.ask("AT+CREG?"));
        Optional<String> missing = calls.isEmpty() ? calls : missing(dialogue.ask("AT+CEREG?"));
        String signal = signal(dialogue.ask("AT+CSQ"));
        if (missing.isEmpty()) {
            return new Standing(missing, signal.isEmpty() ? "" : "the modem hears its network at " + signal);
        }
        // What the modem says of calls is said for both: of LTE many know nothing.
        String heard = signal.isEmpty() ? "" : "; it hears " + signal;
        return new Standing(Optional.of("the modem has no network: " + calls.get() + heard), "");
    }

    /** {@code <n>,<stat>} of TS 27.007 clauses 7.2 and 10.1.22; with {@code <stat>} alone it was not the answer. */
    private static Optional<String> missing(Answer answer) {
        return answer.lines().stream()
                .map(line -> line.substring(line.indexOf(':') + 1).strip().split("\\s*,\\s*"))
                .filter(values -> values.length > 1 && values[1].matches("[0-9]{1,2}"))
                .findFirst()
                .map(values -> missing(Integer.parseInt(values[1])))
                .orElseGet(() -> answer.isOk() ? Optional.of("it does not say") : Optional.empty());
    }

    private static Optional<String> missing(int state) {
        return switch (state) {
            // At home, roaming, for texts only, without falling back to calls.
            case 1, 5, 6, 7, 9, 10 -> Optional.empty();
            case 0 -> Optional.of("it is not looking for one");
            case 2 -> Optional.of("it is looking for one");
            case 3 -> Optional.of("it was turned away");
            case 8 -> Optional.of("emergency calls only");
            default -> Optional.of("it does not know");
        };
    }

    private static String signal(Answer answer) {
        return answer.values()
                .filter(values -> values[0].matches("[0-9]{1,2}"))
                .map(values -> Integer.parseInt(values[0]))
                .filter(level -> level <= MOST)
                .map(Standing::words)
                .orElse("");
    }

    private static String words(int level) {
        int dbm = LEAST + STEP * level;
        String end = level == 0 ? " or less" : level == MOST ? " or more" : "";
        return dbm + " dBm" + end + (dbm <= WEAK ? ", which is weak" : "");
    }
}
