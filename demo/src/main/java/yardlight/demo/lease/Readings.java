package yardlight.demo.lease;

import java.util.Map;

/**
 * What the box of a lease sees now.
 *
 * @param water level of the water tank, ft
 * @param oil level of the oil tank, ft
 * @param separator psi
 * @param injection psi
 * @param pump whether the pump's motor runs
 * @param feeds which power supplies are there, by name: {@code pump} and {@code wells}
 */
public record Readings(
        double water, double oil, double separator, double injection, boolean pump, Map<String, Boolean> feeds) {

    public Readings {
        feeds = Map.copyOf(feeds);
    }
}
