/**
 * What goes on by itself, as rows with a time. Start reading at {@link yardlight.db.due.Dues}; the rows are written by
 * the journal, together with whatever makes them due.
 *
 * <p>Knows nothing of what happens when a time has come.
 */
package yardlight.db.due;
