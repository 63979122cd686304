package yardlight.gateway.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.performance.Figure;
import yardlight.escalation.performance.OnDelays;
import yardlight.escalation.performance.Performance;
import yardlight.escalation.performance.Span;

/** A month of alarms in the form of the contract. Parts are from 0 to 1. */
record MonthView(
        String month,
        boolean whole,
        boolean more,
        Instant from,
        Instant to,
        int occurred,
        int announced,
        List<FigureView> figures,
        List<Span> floods,
        List<FrequentView> frequent,
        List<KeyView> chattering,
        Map<String, BigDecimal> priorities,
        AnswersView answers) {

    record FigureView(String figure, BigDecimal value, BigDecimal target, boolean met) {}

    record KeyView(String site, String point, String condition) {

        static KeyView of(AlarmKey key) {
            return new KeyView(key.site(), key.point(), key.condition());
        }
    }

    record FrequentView(
            String site, String point, String condition, int count, BigDecimal share, List<OnDelays.Effect> onDelays) {}

    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record AnswersView(
            int answered,
            int unanswered,
            Optional<Duration> median,
            Optional<Duration> nineOfTen,
            Optional<Duration> longest) {}

    static MonthView of(MonthOfAlarms month) {
        Performance rated = month.performance();
        return new MonthView(
                month.month().toString(),
                month.whole(),
                month.more(),
                rated.span().from(),
                rated.span().to(),
                rated.occurred(),
                rated.announced(),
                month.rated().stream().map(MonthView::figure).toList(),
                rated.floods(),
                rated.frequent().stream().map(MonthView::frequent).toList(),
                keys(rated.chattering()),
                priorities(rated),
                answers(rated.answers()));
    }

    /** Four places say enough, and write the same number the same way each time. */
    static BigDecimal number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    private static FigureView figure(Figure.Rated rated) {
        return new FigureView(rated.figure().word(), number(rated.value()), number(rated.target()), rated.met());
    }

    private static FrequentView frequent(Performance.Frequent one) {
        return new FrequentView(
                one.key().site(),
                one.key().point(),
                one.key().condition(),
                one.count(),
                number(one.share()),
                one.delays());
    }

    private static List<KeyView> keys(Set<AlarmKey> keys) {
        return keys.stream().map(KeyView::of).toList();
    }

    private static Map<String, BigDecimal> priorities(Performance rated) {
        var parts = new LinkedHashMap<String, BigDecimal>();
        rated.priorities().forEach((priority, part) -> parts.put(priority.word(), number(part)));
        return parts;
    }

    private static AnswersView answers(Performance.Answers answers) {
        return new AnswersView(
                answers.answered(), answers.unanswered(), answers.median(), answers.ninth(), answers.longest());
    }
}
