package yardlight.escalation.wording;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Language;

/**
 * Writes the text of a notice: a sentence for a person half awake, in one segment of at most 160 septets of the GSM
 * 7-bit alphabet, whatever the names, the language and the numbers. Where and what, since when and how to answer are
 * always in it; what does not fit is left out by importance, names are shortened after a whole word.
 */
public final class Wording {

    private Wording() {}

    /**
     * The text about these alarms, worst first. One alarm is told in full, of several the count and as many of the
     * worst as fit. An {@link IllegalArgumentException} when there are none.
     */
    public static String text(List<Subject> subjects, Answering answering, Language language) {
        if (subjects.isEmpty()) {
            throw new IllegalArgumentException("subjects must not be empty");
        }
        Phrases phrases = Phrases.in(language);
        return subjects.size() == 1
                ? one(subjects.get(0), answering, phrases)
                : ManyAlarms.text(subjects, answering, phrases);
    }

    private static String one(Subject subject, Answering answering, Phrases phrases) {
        return subject.circumstance()
                .shared()
                .map(shared -> SharedText.text(subject, shared, answering, phrases))
                .orElseGet(() -> OneAlarm.text(subject, answering, phrases));
    }

    /** The text that tells somebody how everything stands. */
    public static String allsWell(Wellbeing being, Language language) {
        return AllsWellText.text(being, Phrases.in(language));
    }

    /**
     * The text that says what became of these, worst first. An {@link IllegalArgumentException} when there are none.
     *
     * @param answering empty when nothing of it waits for an answer
     */
    public static String news(List<Tiding> tidings, Optional<Answering> answering, Language language) {
        if (tidings.isEmpty()) {
            throw new IllegalArgumentException("tidings must not be empty");
        }
        return NewsText.text(tidings, answering, Phrases.in(language));
    }

    /**
     * A text that goes out anyway, with this after what it is for; empty when there is not enough room for all of it.
     *
     * @param first whether nothing was added to it before
     */
    public static Optional<String> also(String text, Tiding tiding, boolean first, Language language) {
        return NewsText.also(text, tiding, first, Phrases.in(language));
    }

    /** The text that tells of a sign-in with something new, at this time by the reader's clock. */
    public static String signIn(SignIn signIn, boolean own, Instant at, ZoneId zone, Language language) {
        return SignInText.text(signIn, own, at, zone, Phrases.in(language));
    }

    /** The same text when it tells of so many others as well; for them it has room. */
    public static String signIns(String text, int others, Language language) {
        return SignInText.more(text, others, Phrases.in(language));
    }

    /** The text that says how a request to shut in stands. */
    public static String shutIn(ShutInTold told, Language language) {
        return ShutInText.text(told, Phrases.in(language));
    }

    /** The text about a turn. */
    public static String turn(TurnTold told, Language language) {
        return TurnText.text(told, language);
    }

    /** A time of a roster in words: {@code Fri Nov 27 7:00 PM to Sat 7:00 AM}. */
    public static String span(Instant from, Instant to, ZoneId zone, Language language) {
        return TurnText.span(from, to, zone, language);
    }

    /** The text that tries one line of its reader. */
    public static String test(Way way, Answering answering, Language language) {
        return TestText.text(way, answering, Phrases.in(language));
    }
}
