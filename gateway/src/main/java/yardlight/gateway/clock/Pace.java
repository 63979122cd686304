package yardlight.gateway.clock;

import java.time.Duration;

/** How long something takes by the clock on the wall when it takes so long by the gateway's clock. */
@FunctionalInterface
public interface Pace {

    /** The two are the same. */
    Pace REAL = span -> span;

    Duration real(Duration span);
}
