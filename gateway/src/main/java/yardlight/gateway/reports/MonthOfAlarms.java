package yardlight.gateway.reports;

import java.time.YearMonth;
import java.util.List;
import yardlight.escalation.performance.Advice;
import yardlight.escalation.performance.Figure;
import yardlight.escalation.performance.Performance;

/**
 * How the alarms of one month were.
 *
 * @param whole whether the month is over; one that is not is rated up to now
 * @param more whether there were more alarms than were read: it has the first
 */
record MonthOfAlarms(YearMonth month, boolean whole, boolean more, Performance performance) {

    List<Figure.Rated> rated() {
        return Figure.rate(performance);
    }

    List<Advice> advice() {
        return Advice.of(performance);
    }
}
