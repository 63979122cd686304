package yardlight.escalation.swap;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;

/**
 * Which day of a roster somebody means. A day of a roster goes from one time of handover to the next: with a handover at
 * 07:00 Saturday at 02:00 still belongs to Friday. A night goes from 7 PM to 7 AM.
 *
 * @param kind how it was said
 * @param number the day of the week from Monday as 1 on, or of the month; 0 when it was said otherwise
 * @param month of a date; 0 when it was said otherwise
 * @param night whether only the night that begins on that day is meant
 */
public record SwapDay(Kind kind, int number, int month, boolean night) {

    /** How a day is said. */
    public enum Kind {
        TODAY,
        TOMORROW,
        WEEKDAY,
        DATE
    }

    /** Common practice, no source. */
    public static final LocalTime NIGHT_BEGINS = LocalTime.of(19, 0);

    public static final LocalTime NIGHT_ENDS = LocalTime.of(7, 0);

    public SwapDay {
        if (kind == Kind.WEEKDAY) {
            DayOfWeek.of(number);
        }
        if (kind == Kind.DATE) {
            MonthDay.of(month, number);
        }
    }

    /** Today or tomorrow. */
    public static SwapDay near(Kind kind, boolean night) {
        return new SwapDay(kind, 0, 0, night);
    }

    public static SwapDay weekday(DayOfWeek day, boolean night) {
        return new SwapDay(Kind.WEEKDAY, day.getValue(), 0, night);
    }

    public static SwapDay date(MonthDay day, boolean night) {
        return new SwapDay(Kind.DATE, day.getDayOfMonth(), day.getMonthValue(), night);
    }

    /**
     * The first such day from today on, today included; a February 29 is in a year that has none the 28th.
     *
     * @param today by the roster, where the day has begun at the handover, or for a night when the one before ended
     */
    public LocalDate from(LocalDate today) {
        return switch (kind) {
            case TODAY -> today;
            case TOMORROW -> today.plusDays(1);
            case WEEKDAY -> today.with(TemporalAdjusters.nextOrSame(DayOfWeek.of(number)));
            case DATE -> {
                LocalDate day = MonthDay.of(month, number).atYear(today.getYear());
                yield day.isBefore(today) ? MonthDay.of(month, number).atYear(today.getYear() + 1) : day;
            }
        };
    }

    /**
     * The times of that day.
     *
     * @param handover when tours of the roster change hands
     */
    public Part of(LocalDate day, LocalTime handover) {
        return night
                ? new Part(day.atTime(NIGHT_BEGINS), day.plusDays(1).atTime(NIGHT_ENDS))
                : new Part(day.atTime(handover), day.plusDays(1).atTime(handover));
    }
}
