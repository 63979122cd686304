/**
 * The write side: everything that a batch of decisions reads and changes, in one transaction and with plain JDBC. Start
 * reading at {@link yardlight.db.journal.Journal}, then {@link yardlight.db.journal.Sheet}.
 *
 * <p>Knows no rule: it keeps what the engine decided, and what follows from it by definition (due rows, the outbox).
 */
package yardlight.db.journal;
