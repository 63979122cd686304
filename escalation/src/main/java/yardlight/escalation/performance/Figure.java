package yardlight.escalation.performance;

import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What a time's alarms are rated by, each with its published target: those of ISA-18.2 (2009 and 2016, as courses quote them;
 * read second hand), which ask for at least 30 days, and of EEMUA 191 as the HSE's information sheet CHIS6 cites them (read).
 */
public enum Figure {
    /** About one in ten minutes is "very likely acceptable", about two "maximum manageable". */
    AVERAGE(1, value -> value <= 1, Performance::average),
    /** At most ten in any ten minutes. */
    PEAK(Performance.TEN, value -> value <= Performance.TEN, Performance::peak),
    /** Ten minutes with more than ten: less than about 1 % of all. */
    ABOVE(0.01, value -> value < 0.01, Performance::above),
    /** Less than about 1 % of the time. */
    IN_FLOOD(0.01, value -> value < 0.01, Performance::inFlood),
    /** The ten most frequent are 1 to 5 % of the load at most; of few alarms they are always more. */
    LOAD(0.05, value -> value <= 0.05, Performance::load),
    /** None. */
    CHATTERING(0, value -> value == 0, performance -> performance.chattering().size()),
    /** None. */
    FLEETING(0, value -> value == 0, Performance::fleeting),
    /** Fewer than five on any day. */
    STALE(5, value -> value < 5, Performance::stalest);

    /**
     * How a time did by one of them; parts are from 0 to 1.
     *
     * @param met whether the target was met
     */
    public record Rated(Figure figure, double value, double target, boolean met) {}

    private final double target;
    private final DoublePredicate met;
    private final ToDoubleFunction<Performance> value;

    Figure(double target, DoublePredicate met, ToDoubleFunction<Performance> value) {
        this.target = target;
        this.met = met;
        this.value = value;
    }

    /** All of them, in this order. */
    public static List<Rated> rate(Performance performance) {
        return Stream.of(values()).map(figure -> figure.of(performance)).toList();
    }

    private Rated of(Performance performance) {
        double found = value.applyAsDouble(performance);
        return new Rated(this, found, target, met.test(found));
    }

    /** Whether it is a part of a whole. */
    public boolean part() {
        return this == ABOVE || this == IN_FLOOD || this == LOAD;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
