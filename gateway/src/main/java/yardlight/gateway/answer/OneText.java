package yardlight.gateway.answer;

import yardlight.escalation.wording.Gsm7;

/** Words that fit into one text. */
final class OneText {

    /** Septets of a text that is not split (3GPP TS 23.040 9.2.3.16). */
    static final int MOST = 160;

    private static final String CUT = "...";

    private OneText() {}

    /** The words, cut after a whole one where they are too long; they must be in the GSM alphabet. */
    static String of(String gsm) {
        if (Gsm7.septets(gsm) <= MOST) {
            return gsm;
        }
        String shorter = gsm;
        while (Gsm7.septets(shorter) > MOST - CUT.length()) {
            int blank = shorter.lastIndexOf(' ');
            shorter = shorter.substring(0, blank > 0 ? blank : shorter.length() - 1);
        }
        return shorter + CUT;
    }
}
