/**
 * The log to be read: numbered lines, never changed, from either end. Start reading at
 * {@link yardlight.db.log.LogLines}; lines are written by the journal.
 */
package yardlight.db.log;
