/**
 * What happens by the calendar: handovers into the log, the nightly backup, retention. Start with
 * {@link yardlight.gateway.calendar.CalendarConfiguration}.
 *
 * <p>Quartz keeps these in the database, so that of several gateways one does each. Rungs and delays are not its business:
 * they are due rows.
 */
package yardlight.gateway.calendar;
