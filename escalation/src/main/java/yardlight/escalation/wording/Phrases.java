package yardlight.escalation.wording;

import java.time.DayOfWeek;
import java.util.Optional;
import yardlight.escalation.setup.Language;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestState;

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

    /** Where the value should be, beside the value. */
    String target(String number);

    /** What it was before it became worse; the condition as {@link #condition} gives it. */
    String was(String condition);

    /** The condition is over; the time is empty when nobody knows it. */
    String returned(String time);

    /** It is over but latched. */
    String wantsReset();

    /** A feed is on and the tanks fill, while what empties them has none. */
    String stillFills(String feed);

    /** How long a tank takes to run over; a sentence. */
    String toOverflow(String length);

    /** After a sentence with a longer time: the shortest that it may take. */
    String atWorst(String length);

    /** After a sentence: its time is the shortest. */
    String atWorst();

    /** What a condition that was found out from readings may mean, in a sentence; empty when its name says it all. */
    Optional<String> meaning(String condition);

    /** What it may mean that a pump does not run at all, in a sentence. */
    String stands(Circumstance.Stands stands);

    /**
     * How many sites are silent, and since when.
     *
     * @param name of the link or feed; may be empty
     */
    String silentTogether(int sites, boolean link, String name, String time);

    /** The same as the name of a point. */
    String togetherOn(int sites, boolean link, String name);

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

    /** In three letters. */
    String day(DayOfWeek day);

    /** All of them. */
    String sitesReporting(int sites);

    String sitesSilent(int silent, int sites);

    String inAlarm(int alarms);

    /** Alarms that are kept from people. */
    String aside(int alarms);

    /** Sites from which nobody expects to hear. */
    String unwatched(int sites);

    String late(String due);

    /** Before the ways that nothing has shown to work for 30 days. */
    String unproven();

    /** Of a person, several of them. */
    String lines();

    /** One of them; without its channel when that is empty. */
    String way(Way way);

    /** When a way was last shown to work; 0 days ago is today. */
    String proven(Way way, long days);

    /** What is said of hours in which nobody is called. */
    GapPhrases gaps();

    String test(Way way);

    /** What it is said of comes before it: one alarm, or several. */
    String backToNormal(int alarms, String time);

    /** For how long what is over had lasted. */
    String lasted(String condition, String length);

    /** What is over wants no answer. */
    String noReply();

    /** Somebody took it on; what comes after it. */
    String hasIt(String name, String time);

    /** The same in short. */
    String has(String name);

    /** After what is over. */
    String normal(String time);

    String alarms(int alarms);

    /** How much of what is over, and of what somebody has; not both of them 0. */
    String news(int over, int taken);

    /** What somebody did with something that is new; after their name, before an address. */
    String signedIn(boolean program);

    /** What to do when nobody knows of it; the own login of the reader, or somebody else's. */
    String notKnown(boolean own);

    String noAlarm();

    /** So many more of the same, as a sentence of its own. */
    String more(int others);

    /** Who asked to shut in, when it was no person. */
    String asker(Asker.Kind asker);

    /**
     * How a request to shut in stands, after the name of the site.
     *
     * @param by who asked; may be empty
     */
    String shutIn(RequestState state, String time, String by);

    /** Between what a text is for and what else there is to say. */
    String also();
}
