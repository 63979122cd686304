/**
 * Shows silences: what each was and is taken for, why, and how often the first word was right. Start with {@link
 * yardlight.gateway.silence.SilenceView}.
 */
package yardlight.gateway.silence;
