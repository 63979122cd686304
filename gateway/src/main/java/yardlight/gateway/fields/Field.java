package yardlight.gateway.fields;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Set;

/**
 * One field of a form.
 *
 * @param path where it stands in its piece of the setup: {@code limits/highHigh}
 * @param unit what stands beside it, as {@link Faces} knows it; may be empty
 * @param usual what holds while it is empty, as it would stand in the setup; may be empty
 * @param signed whether it may be below 0
 * @param cases in which cases of its group it counts; empty for all
 */
public record Field(String path, Kind kind, String unit, String usual, boolean signed, Set<String> cases) {

    /** The unit of the point whose form it is. */
    public static final String OF_POINT = "point";

    /** That of the lengths of its tank. */
    public static final String OF_TANK = "tank";

    public static Field of(Kind kind, String path) {
        return new Field(path, kind, "", "", false, Set.of());
    }

    public static Field text(String path) {
        return of(Kind.TEXT, path);
    }

    public static Field span(String path) {
        return of(Kind.SPAN, path);
    }

    public static Field choice(String path) {
        return of(Kind.CHOICE, path);
    }

    /** A number that is not below 0. */
    public static Field number(String path, String unit) {
        return of(Kind.NUMBER, path).in(unit);
    }

    /** A number that may be below 0. */
    public static Field signed(String path, String unit) {
        return new Field(path, Kind.NUMBER, unit, "", true, Set.of());
    }

    public Field in(String other) {
        return new Field(path, kind, other, usual, signed, cases);
    }

    public Field usually(String other) {
        return new Field(path, kind, unit, other, signed, cases);
    }

    public Field usually(Duration other) {
        return usually(other.toString());
    }

    public Field usually(double other) {
        return usually(BigDecimal.valueOf(other).stripTrailingZeros().toPlainString());
    }

    /** The same where it counts in some cases only. */
    public Field when(String... some) {
        return new Field(path, kind, unit, usual, signed, Set.of(some));
    }

    /** By which a browser knows it. */
    public String id() {
        return path.replace('/', '-');
    }

    /** In its object. */
    String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
