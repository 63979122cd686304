/**
 * What only one of several gateways on one database does at a time. Start reading at {@link yardlight.db.turn.Turns}.
 *
 * <p>Knows nothing of what that is.
 */
package yardlight.db.turn;
