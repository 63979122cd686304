package yardlight.gateway.measure;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MILLI;
import static systems.uom.common.USCustomary.FAHRENHEIT;
import static systems.uom.common.USCustomary.FOOT;
import static systems.uom.common.USCustomary.GALLON_LIQUID;
import static systems.uom.common.USCustomary.INCH;
import static systems.uom.common.USCustomary.POUND;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.VOLT;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * The units of what is measured at a lease, by their names. A unit that is not known here fits itself and nothing else: it is
 * kept, and never converted. Capitals do not matter.
 *
 * <p>A converted value is rounded to nine digits, far finer than any sensor; one that needs no conversion stays as it is.
 */
public final class Units {

    private static final MathContext NINE_DIGITS = new MathContext(9);

    /** Pound-force per square inch: the weight of a pound where gravity is 9.80665 m/s². */
    private static final Unit<?> PSI =
            POUND.multiply(METRE_PER_SQUARE_SECOND.multiply(9.80665)).divide(INCH.pow(2));

    /** Of petroleum: 42 US gallons. The library's own barrel is another one. */
    private static final Unit<?> BARREL = GALLON_LIQUID.multiply(42);

    private static final Map<String, Unit<?>> NAMES = names();
    private static final Map<List<String>, UnitConverter> CONVERTERS = new ConcurrentHashMap<>();

    private Units() {}

    private static Map<String, Unit<?>> names() {
        var names = new HashMap<String, Unit<?>>();
        put(names, METRE, "m");
        put(names, CENTI(METRE), "cm");
        put(names, MILLI(METRE), "mm");
        put(names, FOOT, "ft");
        put(names, INCH, "in");
        put(names, PASCAL, "pa");
        put(names, KILO(PASCAL), "kpa");
        put(names, PASCAL.multiply(100_000), "bar");
        put(names, PASCAL.multiply(100), "mbar");
        put(names, PSI, "psi");
        put(names, VOLT, "v");
        put(names, MILLI(VOLT), "mv");
        put(names, AMPERE, "a");
        put(names, MILLI(AMPERE), "ma");
        put(names, FAHRENHEIT, "°f", "f", "degf", "deg f");
        put(names, CELSIUS, "°c", "c", "degc", "deg c");
        put(names, CUBIC_METRE, "m³", "m3");
        put(names, LITRE, "l");
        put(names, GALLON_LIQUID, "gal");
        put(names, BARREL, "bbl");
        put(names, PERCENT, "%");
        return Map.copyOf(names);
    }

    private static void put(Map<String, Unit<?>> names, Unit<?> unit, String... called) {
        for (String name : called) {
            names.put(name, unit);
        }
    }

    private static Optional<Unit<?>> unit(String name) {
        return Optional.ofNullable(NAMES.get(name.toLowerCase(Locale.ROOT)));
    }

    /** Whether a value in the one can be said in the other. */
    public static boolean fit(String one, String other) {
        return one.equals(other)
                || unit(one)
                        .flatMap(known -> unit(other).map(known::isCompatible))
                        .orElse(false);
    }

    /** @throws IllegalArgumentException when the units do not {@link #fit} */
    public static double convert(BigDecimal value, String from, String to) {
        if (from.equals(to) || same(from, to)) {
            return value.doubleValue();
        }
        Number converted = CONVERTERS
                .computeIfAbsent(List.of(from, to), pair -> converter(from, to))
                .convert(value);
        return BigDecimal.valueOf(converted.doubleValue()).round(NINE_DIGITS).doubleValue();
    }

    /** The same for a value that is a double already. */
    public static double convert(double value, String from, String to) {
        return from.equals(to) ? value : convert(BigDecimal.valueOf(value), from, to);
    }

    private static boolean same(String from, String to) {
        return unit(from).isPresent() && unit(from).equals(unit(to));
    }

    private static UnitConverter converter(String from, String to) {
        if (!fit(from, to)) {
            throw new IllegalArgumentException("units must fit each other: " + from + ", " + to);
        }
        try {
            return unit(from).orElseThrow().getConverterToAny(unit(to).orElseThrow());
        } catch (IncommensurableException e) {
            throw new IllegalArgumentException("units must fit each other: " + from + ", " + to, e);
        }
    }
}
