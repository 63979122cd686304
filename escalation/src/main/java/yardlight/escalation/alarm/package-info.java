/**
 * The life of one alarm: its nine states, what moves it, and what tells a nuisance from an alarm.
 *
 * <p>Start with {@link yardlight.escalation.alarm.AlarmTransitions}, the table, then {@link
 * yardlight.escalation.alarm.AlarmRules}, which keeps the delays and asks the table. Whom an alarm calls, and how, is
 * not known here: nothing of the other packages is.
 */
package yardlight.escalation.alarm;
