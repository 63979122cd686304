package yardlight.escalation.setup;

import java.util.Optional;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.trend.FallRules;

/**
 * What a point's readings are of, as far as more can be told from them than from numbers.
 *
 * @param tank whose level it reads
 * @param pump whose signal it reads
 * @param leak how a fall of the pressure that it reads is judged
 */
public record Equipment(Optional<TankRules> tank, Optional<PumpRules> pump, Optional<FallRules> leak) {

    public static final Equipment NONE = new Equipment(Optional.empty(), Optional.empty(), Optional.empty());
}
