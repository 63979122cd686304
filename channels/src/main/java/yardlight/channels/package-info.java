/**
 * Ways to reach a person. Start with {@link yardlight.channels.Channel}; what it says about one try is an
 * {@link yardlight.channels.Attempt}.
 *
 * <p>Each way has a package of its own below this one and the only client library it needs. They do not know each other,
 * nor alarms, ladders or the database; nothing here reads the wall clock.
 */
package yardlight.channels;
