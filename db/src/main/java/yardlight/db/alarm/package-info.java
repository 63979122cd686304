/**
 * Alarms to be shown, each with its callout, notices and attempts. Start reading at {@link yardlight.db.alarm.Alarms}.
 *
 * <p>Changes nothing, and needs the same few queries for one alarm as for five hundred.
 */
package yardlight.db.alarm;
