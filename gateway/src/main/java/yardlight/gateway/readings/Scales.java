package yardlight.gateway.readings;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Readings;
import yardlight.db.reading.Series;
import yardlight.escalation.limit.Current;
import yardlight.escalation.setup.Point;
import yardlight.gateway.measure.Units;
import yardlight.gateway.setup.SetupInForce;

/**
 * Says in which unit a reading is decided and in which it is stored. The point's own unit is the setup's; where that has
 * none, the one in which the point was first posted. What is stored keeps its unit as long as the point's fits it.
 */
@Component
class Scales {

    /** In what a series is stored changes hardly ever, and the lane looks once more. */
    private static final Duration REMEMBERED = Duration.ofMinutes(10);

    private static final String LOOP = "mA";
    private static final MathContext TWELVE_DIGITS = new MathContext(12);

    private final SetupInForce inForce;
    private final Readings readings;
    private final Cache<String, Optional<String>> stored = Caffeine.newBuilder()
            .maximumSize(10_000)
            .expireAfterWrite(REMEMBERED)
            .build();

    Scales(SetupInForce inForce, Readings readings) {
        this.inForce = inForce;
        this.readings = readings;
    }

    /**
     * A value as it is decided and as it is stored.
     *
     * @param own in the point's own unit
     * @param kept in the unit of its series
     * @param unit of the series, as far as anybody said
     * @param anew whether that is another series than before, because the point's unit does not fit the old one
     */
    record Scaled(double own, double kept, Optional<String> unit, boolean anew) {}

    /** The point's own unit, as far as it has any. */
    Optional<String> own(String site, String point) {
        return inForce.setup().known(site, point).flatMap(Point::unit).or(() -> stored(site, point));
    }

    /** Whether a value can be posted in a unit. */
    boolean fits(String site, String point, String said) {
        return loop(site, point, Optional.of(said)).isPresent()
                || own(site, point).map(own -> Units.fit(said, own)).orElse(true);
    }

    /** @param posted in a unit that {@link #fits}, if it has any */
    Scaled scale(String site, String point, BigDecimal posted, Optional<String> in) {
        Optional<Current> loop = loop(site, point, in);
        if (loop.isEmpty()) {
            return scaled(site, point, posted, in);
        }
        double current = Units.convert(posted, in.orElse(LOOP), LOOP);
        return scaled(site, point, rounded(loop.get().scaled(current)), own(site, point));
    }

    /** What the arithmetic leaves behind the twelfth digit is no measurement. */
    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).round(TWELVE_DIGITS);
    }

    private Scaled scaled(String site, String point, BigDecimal value, Optional<String> said) {
        Optional<String> own = own(site, point).or(() -> said);
        Optional<String> series = stored(site, point);
        double decided = converted(value, said, own);
        boolean anew = series.isPresent() && own.isPresent() && !Units.fit(series.get(), own.get());
        if (series.isEmpty() || anew) {
            return new Scaled(decided, decided, own, anew);
        }
        return new Scaled(decided, converted(value, said.or(() -> own), series), series, false);
    }

    /** What a box said of a current loop is a current, unless it has scaled it already. */
    private Optional<Current> loop(String site, String point, Optional<String> said) {
        return inForce.setup()
                .known(site, point)
                .flatMap(known -> known.rules().current())
                .filter(loop -> said.isEmpty() || Units.fit(said.get(), LOOP));
    }

    private static double converted(BigDecimal value, Optional<String> from, Optional<String> to) {
        return from.isEmpty() || to.isEmpty() ? value.doubleValue() : Units.convert(value, from.get(), to.get());
    }

    private Optional<String> stored(String site, String point) {
        return stored.get(site + "/" + point, name -> readings.of(site, point).flatMap(Series::unit));
    }

    /** Somebody else knows better. */
    void forget() {
        stored.invalidateAll();
    }
}
