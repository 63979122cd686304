/**
 * What happened to an alarm, in order and in plain words, from the log and from what became of its notices: for its page and
 * for reports. Start reading at {@link yardlight.gateway.account.Accounts}.
 *
 * <p>Has no doors, and knows nothing of what may be done.
 */
package yardlight.gateway.account;
