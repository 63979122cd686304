package yardlight.escalation.wording;

import yardlight.escalation.setup.Language;

/**
 * What a text says, in one language. Written as the language is written; whatever the GSM alphabet lacks is
 * transliterated afterwards.
 */
interface Phrases {

    static Phrases in(Language language) {
        return switch (language) {
            case EN -> new English();
            case ES -> new Spanish();
        };
    }

    /** The condition in capitals; one that is not known is shown as it is. */
    String condition(String condition);

    /** The box itself as a point. */
    String box();

    /** The limit beside the value. */
    String limit(String number);

    /** The condition is over; the time is empty when nobody knows it. */
    String returned(String time);

    /** It is over but latched. */
    String wantsReset();

    /** How often it was reported. */
    String times(int count);

    /** How to answer one callout. */
    String reply(int code);

    /** How to answer all of them. */
    String replyAll();

    String or();

    /** After the name of the site, before the worst alarm. */
    String alarmsHere(int alarms);

    /** A sentence of its own. */
    String alarmsAt(int alarms, int sites);

    /** Between the worst alarm and the next. */
    String then();
}
