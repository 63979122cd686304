/**
 * Reports for whoever asks later: who was told of an alarm and when, how the alarms of a month were, and what they cost the
 * people who are called. Start reading at {@link yardlight.gateway.reports.NotificationReports}.
 *
 * <p>Only reads. How alarms are rated is in {@code escalation.performance}.
 */
package yardlight.gateway.reports;
