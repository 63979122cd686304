/**
 * When and how often people are left alone: quiet hours, and the limits on texts.
 *
 * <p>Start with {@link yardlight.escalation.quiet.QuietHours}; {@link yardlight.escalation.quiet.Desk} holds what
 * one person was sent and what still waits for them. Of alarms only the priority is known here; notices and callouts are
 * ids.
 */
package yardlight.escalation.quiet;
