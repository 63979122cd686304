package yardlight.gateway.story;

/**
 * What somebody typed on the page of an alarm, and what was wrong with it.
 *
 * @param refusal why the rules forbid what was asked for; empty when they did not
 * @param wrongReason what is wrong with the reason; may be empty, as the others
 */
record Typed(
        String length,
        String reason,
        String note,
        String refusal,
        String wrongLength,
        String wrongReason,
        String wrongNote) {

    static final Typed NOTHING = new Typed("PT2H", "", "", "", "", "", "");

    Typed refused(String why) {
        return new Typed(length, reason, note, why, wrongLength, wrongReason, wrongNote);
    }

    boolean good() {
        return wrongLength.isEmpty() && wrongReason.isEmpty() && wrongNote.isEmpty();
    }
}
