/**
 * What came in from outside: texts with what they are answered, and what carriers said later of texts that they had taken.
 * Start reading at {@link yardlight.db.incoming.IncomingTexts} and {@link yardlight.db.incoming.Receipts}.
 *
 * <p>Knows nothing of what a text or a receipt means.
 */
package yardlight.db.incoming;
