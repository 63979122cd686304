/**
 * The words of a text: what a person reads in the night, in one segment whatever the names and numbers.
 *
 * <p>Start at {@link yardlight.escalation.wording.Wording}, then {@link yardlight.escalation.wording.Segments} and
 * {@link yardlight.escalation.wording.Gsm7} for what fits. To add a language, add it to
 * {@link yardlight.escalation.setup.Language} and follow the compiler.
 *
 * <p>It must not know who is told, by which channel, or what time it is now.
 */
package yardlight.escalation.wording;
