package yardlight.gateway.reports;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import yardlight.db.report.PastAlarms;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.performance.PastAlarm;
import yardlight.escalation.performance.Performance;
import yardlight.escalation.performance.Span;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Rates the alarms of months: one query for each of them and two for what went on before. One report at a time. */
@Component
class PerformanceReports {

    /** So many of one month fit into a small heap; a month with more of them needs no further proof. */
    static final int MOST = 100_000;

    /** An alarm that held for longer than this before the first month, and is over, is not told as stale in it. */
    private static final Duration BEFORE = Duration.ofDays(31);

    private final PastAlarms alarms;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final OneReport one;

    PerformanceReports(PastAlarms alarms, SetupInForce inForce, InstantSource clock, OneReport one) {
        this.alarms = alarms;
        this.inForce = inForce;
        this.clock = clock;
        this.one = one;
    }

    /**
     * The months that have begun, oldest first.
     *
     * @throws Problem 503 while another one is made
     */
    List<MonthOfAlarms> of(Months asked) {
        return one.make(() -> rated(asked, clock.instant()));
    }

    private List<MonthOfAlarms> rated(Months asked, Instant now) {
        Setup setup = inForce.setup();
        Function<AlarmKey, Timing> timing =
                key -> setup.point(key.site(), key.point()).timing();
        Instant first = asked.span(asked.from()).from();
        List<PastAlarm> goingOn = alarms.goingOn(asked.site(), first.minus(BEFORE), first, MOST);
        var months = new ArrayList<MonthOfAlarms>();
        for (YearMonth month : asked.all()) {
            Span whole = asked.span(month);
            if (!whole.from().isBefore(now)) {
                break;
            }
            Span span = whole.to().isAfter(now) ? new Span(whole.from(), now) : whole;
            List<PastAlarm> here = alarms.between(asked.site(), span.from(), span.to(), MOST);
            var all = new ArrayList<>(goingOn);
            all.addAll(here);
            months.add(new MonthOfAlarms(
                    month,
                    span.equals(whole),
                    here.size() == MOST,
                    Performance.of(all, span, asked.zone(), now, timing)));
            goingOn = all.stream()
                    .filter(alarm -> alarm.over()
                            .filter(over -> !over.isAfter(span.to()))
                            .isEmpty())
                    .toList();
        }
        return months;
    }
}
