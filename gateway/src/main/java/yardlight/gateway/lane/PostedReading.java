package yardlight.gateway.lane;

import java.util.Optional;
import yardlight.escalation.reading.Reading;

/**
 * A reading as a box posted it.
 *
 * @param reading as it is decided, in the point's own unit; its time to the millisecond
 * @param kept the value as it is stored
 * @param unit in which it is stored; empty when neither box nor setup has said any
 * @param anew whether another series may be begun if the point's is in another unit
 */
public record PostedReading(Reading reading, double kept, Optional<String> unit, boolean anew) {}
