package yardlight.escalation.wording;

import java.time.Instant;
import java.time.ZoneId;

/**
 * The text about a sign-in: {@code Yardlight, no alarm: ana signed in with a new browser from 198.51.100.7, Sat 2:13 AM. Not
 * you? Change your password.}
 */
final class SignInText {

    /** Septets that each has a right to: a name that people give to a login, and any address of IPv6. */
    private static final int LOGIN = 20;

    private static final int ADDRESS = 39;
    private static final int MOST_OTHERS = 99;

    private SignInText() {}

    static String text(SignIn signIn, boolean own, Instant at, ZoneId zone, Phrases phrases) {
        var room = new Room();
        // Most important first; these always fit.
        String did = room.take(" " + gsm(phrases.signedIn(signIn.program())));
        String address = room.take(" " + Shortening.to(ADDRESS, gsm(signIn.address())));
        String time = room.take(", " + gsm(Hour.ofDay(at, zone, phrases)) + ".");
        String advice = room.take(" " + gsm(phrases.notKnown(own)));
        room.keep(Gsm7.septets(others(MOST_OTHERS, phrases)));
        String login = room.take(Shortening.to(Math.min(LOGIN, room.left()), gsm(signIn.login())));
        String lead = room.take("Yardlight, " + gsm(phrases.noAlarm()) + ": ", "Yardlight: ");
        room.give(Gsm7.septets(login));
        return lead + room.take(Shortening.to(room.left(), gsm(signIn.login()))) + did + address + time + advice;
    }

    static String more(String text, int others, Phrases phrases) {
        return text + others(Math.min(others, MOST_OTHERS), phrases);
    }

    private static String others(int count, Phrases phrases) {
        return " " + gsm(phrases.more(count));
    }

    private static String gsm(String words) {
        return Transliteration.gsm(words);
    }
}
