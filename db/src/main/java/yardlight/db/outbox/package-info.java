/**
 * Notices on their way out. Start reading at {@link yardlight.db.outbox.Outbox}; rows are put in and taken out by the
 * journal, together with the state of the notice.
 *
 * <p>Knows nothing of channels but their names.
 */
package yardlight.db.outbox;
