package yardlight.escalation.wording;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import yardlight.escalation.setup.Language;

/**
 * The texts about turns: {@code Yardlight, no alarm: Ana Ruelas asks: will you take over Fri Nov 27 7:00 PM to Sat 7:00 AM?
 * Reply YES 31 or NO 31}. A name is cut where it is too long; the rest always fits.
 */
final class TurnText {

    /** Septets that a name has a right to. */
    private static final int NAME = 30;

    /** Less than a week apart the day of the week says which day it is. */
    private static final Duration SAME_WEEK = Duration.ofDays(6);

    private static final List<String> ENGLISH =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final List<String> SPANISH =
            List.of("ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic");

    private TurnText() {}

    static String text(TurnTold told, Language language) {
        Phrases phrases = Phrases.in(language);
        String name = Shortening.to(NAME, Transliteration.gsm(told.who()));
        String roster = Shortening.to(NAME, Transliteration.gsm(told.roster()));
        String span = span(told.from(), told.to(), told.zone(), language);
        String until = time(told.to(), told.zone(), language);
        String words = switch (language) {
            case EN -> english(told, name, roster, span, until);
            case ES -> spanish(told, name, roster, span, until);
        };
        var room = new Room();
        String said = room.take(Transliteration.gsm(words));
        return room.take("Yardlight, " + Transliteration.gsm(phrases.noAlarm()) + ": ", "Yardlight: ") + said;
    }

    private static String english(TurnTold told, String name, String roster, String span, String until) {
        int code = told.code();
        return switch (told.kind()) {
            case ASKED -> name + " asks: will you take over " + span + "? Reply YES " + code + " or NO " + code;
            case TAKEN -> name + " takes over from you " + span + ". The roster has it.";
            case TAKES -> "you take over from " + name + " " + span + ". The roster has it.";
            case DECLINED -> "nobody takes over " + span + ", all said no. You still have it.";
            case EXPIRED -> "nobody took over " + span + " in time. You still have it.";
            case COMES_ON -> "you are on call for " + roster + " until " + until + before(name, ". Before you: ");
            case GOES_OFF -> "you are off call for " + roster + ". " + name + " has it until " + until + ".";
        };
    }

    private static String spanish(TurnTold told, String name, String roster, String span, String until) {
        int code = told.code();
        return switch (told.kind()) {
            case ASKED -> name + " pregunta: ¿toma usted el turno " + span + "? Responda SI " + code + " o NO " + code;
            case TAKEN -> name + " toma su turno " + span + ". Ya quedó en el rol.";
            case TAKES -> "usted toma el turno de " + name + " " + span + ". Ya quedó en el rol.";
            case DECLINED -> "nadie toma su turno " + span + ": todos dijeron que no. Sigue siendo suyo.";
            case EXPIRED -> "nadie tomó a tiempo su turno " + span + ". Sigue siendo suyo.";
            case COMES_ON ->
                "usted está de guardia en " + roster + " hasta el " + until + before(name, ". Antes de usted: ");
            case GOES_OFF ->
                "usted ya no está de guardia en " + roster + ". La tiene " + name + " hasta el " + until + ".";
        };
    }

    private static String before(String name, String words) {
        return name.isEmpty() ? "." : words + name + ".";
    }

    /** "Fri Nov 27 7:00 PM to Sat 7:00 AM", "del vie 27 nov 7:00 PM al sáb 7:00 AM". */
    static String span(Instant from, Instant to, ZoneId zone, Language language) {
        boolean sameDay = from.atZone(zone).toLocalDate().equals(to.atZone(zone).toLocalDate());
        String first = time(from, zone, language);
        String last = sameDay
                ? Hour.of(to, zone)
                : Duration.between(from, to).compareTo(SAME_WEEK) < 0
                        ? Hour.ofDay(to, zone, Phrases.in(language))
                        : time(to, zone, language);
        return switch (language) {
            case EN -> first + " to " + last;
            case ES -> "del " + first + (sameDay ? " a " : " al ") + last;
        };
    }

    /** "Fri Nov 27 7:00 PM". */
    private static String time(Instant at, ZoneId zone, Language language) {
        ZonedDateTime local = at.atZone(zone);
        String day = Phrases.in(language).day(local.getDayOfWeek());
        int month = local.getMonthValue() - 1;
        String date = switch (language) {
            case EN -> ENGLISH.get(month) + " " + local.getDayOfMonth();
            case ES -> local.getDayOfMonth() + " " + SPANISH.get(month);
        };
        return day + " " + date + " " + Hour.of(at, zone);
    }
}
