package yardlight.escalation.reply;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import yardlight.escalation.swap.SwapDay;

/**
 * Which turn somebody wants to swap: {@code swap fri}, {@code swap nov 27 night}, {@code cambio viernes}. Dates in numbers are
 * not read: 5/6 is one day to an English reader and another one to a Spanish one.
 */
final class Days {

    private static final List<String> WEEKDAYS = List.of(
            "mon(?:day)?|lun(?:es)?",
            "tue(?:s|sday)?|mar(?:tes)?",
            "wed(?:nesday)?|mie(?:rcoles)?",
            "thu(?:r|rs|rsday)?|jue(?:ves)?",
            "fri(?:day)?|vie(?:rnes)?",
            "sat(?:urday)?|sab(?:ado)?",
            "sun(?:day)?|dom(?:ingo)?");

    private static final List<String> MONTHS = List.of(
            "jan(?:uary)?|ene(?:ro)?",
            "feb(?:ruary)?|feb(?:rero)?",
            "mar(?:ch)?|mar(?:zo)?",
            "apr(?:il)?|abr(?:il)?",
            "may|mayo",
            "june?|jun(?:io)?",
            "july?|jul(?:io)?",
            "aug(?:ust)?|ago(?:sto)?",
            "sept?(?:ember)?|sep(?:tiembre)?",
            "oct(?:ober)?|oct(?:ubre)?",
            "nov(?:ember)?|nov(?:iembre)?",
            "dec(?:ember)?|dic(?:iembre)?");

    private static final String NIGHT = " night| at night| noche| en la noche| por la noche| de noche";

    private static final Pattern SWAP = Pattern.compile("(?:please |por favor )?(?:swap|cambio|cambiar|cambia|cambie)"
            + "(?: (?:my|mi|for|on|de|del|el|la|por|turn|turno|shift))*(?<day>(?: [\\p{L}\\d]+){0,3}?)(?<night>" + NIGHT
            + ")?(?: (?:please|pls|por favor|porfa))?");

    private static final Pattern TODAY = Pattern.compile("today|hoy");
    private static final Pattern TONIGHT = Pattern.compile("tonight|noche|night");
    private static final Pattern TOMORROW = Pattern.compile("tomorrow|manana");
    private static final Pattern MONTH_FIRST = Pattern.compile("(\\p{L}+) (\\d{1,2})(?:st|nd|rd|th)?");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})(?: de)? (\\p{L}+)");

    private Days() {}

    /** Empty when it is no such request at all; {@code cambio} alone is how a radio hands over, and a talk about it is talk. */
    static Optional<Said> swap(String words) {
        Matcher found = SWAP.matcher(words);
        if (!found.matches()) {
            return Optional.empty();
        }
        String day = found.group("day").strip();
        Optional<SwapDay> meant = day(day, found.group("night") != null);
        boolean asks = meant.isPresent() || words.matches("(please )?swap( my)?( turn| shift)?( please)?|swap \\S+");
        return asks ? Optional.of(new Said.Swap(meant)) : Optional.empty();
    }

    private static Optional<SwapDay> day(String day, boolean night) {
        if (TONIGHT.matcher(day).matches() || night && day.matches("|esta")) {
            return Optional.of(SwapDay.near(SwapDay.Kind.TODAY, true));
        }
        if (TODAY.matcher(day).matches()) {
            return Optional.of(SwapDay.near(SwapDay.Kind.TODAY, night));
        }
        if (TOMORROW.matcher(day).matches()) {
            return Optional.of(SwapDay.near(SwapDay.Kind.TOMORROW, night));
        }
        Optional<SwapDay> weekday = place(day, WEEKDAYS).map(at -> SwapDay.weekday(DayOfWeek.of(at), night));
        return weekday.or(() -> date(day, night));
    }

    private static Optional<SwapDay> date(String day, boolean night) {
        Matcher english = MONTH_FIRST.matcher(day);
        if (english.matches()) {
            return date(english.group(1), english.group(2), night);
        }
        Matcher spanish = DAY_FIRST.matcher(day);
        return spanish.matches() ? date(spanish.group(2), spanish.group(1), night) : Optional.empty();
    }

    private static Optional<SwapDay> date(String month, String day, boolean night) {
        try {
            return place(month, MONTHS).map(found -> SwapDay.date(MonthDay.of(found, Integer.parseInt(day)), night));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** From 1 on. */
    private static Optional<Integer> place(String word, List<String> among) {
        return IntStream.range(0, among.size())
                .filter(at -> word.matches(among.get(at)))
                .mapToObj(at -> at + 1)
                .findFirst();
    }
}
