package yardlight.escalation.tank;

import java.util.Optional;

/**
 * What a point needs to know of the tank whose level it reads.
 *
 * @param head when it reads the pressure at the bottom in psi instead; then the tank is measured in feet
 */
public record TankRules(Tank tank, Optional<Head> head) {

    /** A tank whose level is read in its own unit of length. */
    public TankRules(Tank tank) {
        this(tank, Optional.empty());
    }

    /** The height of the liquid by a reading. */
    public double height(double reading) {
        return head.map(by -> by.feet(reading)).orElse(reading);
    }

    /** What is in it by a reading. */
    public double volume(double reading) {
        return tank.volume(height(reading));
    }
}
