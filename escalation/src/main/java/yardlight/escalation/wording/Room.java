package yardlight.escalation.wording;

/**
 * The septets of one segment while a text is put together. Its parts are asked for in the order of their importance,
 * which is not the order in which they are read.
 */
final class Room {

    private int left = Segments.Alphabet.GSM7.alone();

    /** The first of these wordings that still fits, and its place is taken; nothing when none does. */
    String take(String... wordings) {
        for (String wording : wordings) {
            if (Gsm7.septets(wording) <= left) {
                left -= Gsm7.septets(wording);
                return wording;
            }
        }
        return "";
    }

    /** Keeps up to so many septets for what comes later, and tells how many that are. */
    int keep(int septets) {
        int kept = Math.min(septets, left);
        left -= kept;
        return kept;
    }

    /** Gives back what was kept or taken and not used. */
    void give(int septets) {
        left += septets;
    }

    /** What nobody has asked for yet. */
    int left() {
        return left;
    }
}
