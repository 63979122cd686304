package yardlight.gateway.clock;

import java.time.Instant;
import java.util.Date;

/** Instants as older libraries want them and give them. Nobody else needs that type, which would ask the clock when made. */
public final class Dates {

    private Dates() {}

    /** To the millisecond; what is finer is cut off. */
    public static Date of(Instant instant) {
        return Date.from(instant);
    }

    public static Instant instant(Date date) {
        return date.toInstant();
    }
}
