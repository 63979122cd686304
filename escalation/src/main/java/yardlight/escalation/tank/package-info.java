/**
 * What a tank holds: height to volume and back for the shapes that stand on leases, and the height of a liquid by what it
 * weighs. Start with {@link yardlight.escalation.tank.Tank}.
 *
 * <p>Lengths are in any one unit and volumes in its cube, so nothing here has to know which; it knows nothing of ours.
 */
package yardlight.escalation.tank;
