/**
 * What goes on by itself: looks several times a second for what is due and hands it to the lane. Start reading at
 * {@code DueLoop}.
 *
 * <p>Has no timer for anything in particular: whatever is due is a row, and survives every restart.
 */
package yardlight.gateway.due;
