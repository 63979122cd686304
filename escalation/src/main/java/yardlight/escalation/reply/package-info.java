/**
 * What a person meant by a text or a mail that came back, in English or Spanish.
 *
 * <p>Start at {@link yardlight.escalation.reply.ReplyReader}. The rule above all others: what a careful dispatcher would not
 * bet a tank on acknowledges nothing, and the person is asked back.
 *
 * <p>It must not know who wrote it, nor what waits for an answer.
 */
package yardlight.escalation.reply;
