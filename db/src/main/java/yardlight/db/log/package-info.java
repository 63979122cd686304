/**
 * The log to be read: numbered lines, oldest first, never changed. Start reading at
 * {@link yardlight.db.log.LogLines}; lines are written by the journal.
 */
package yardlight.db.log;
