/**
 * Sends what the engine has queued: takes notices out of the outbox, hands each to the channel of its line, and has the
 * lane record what came of it. Start reading at {@code Dispatcher}, then {@code Judgement}.
 *
 * <p>Knows no rule about whom to call and when, and nothing of how a channel works.
 */
package yardlight.gateway.dispatch;
