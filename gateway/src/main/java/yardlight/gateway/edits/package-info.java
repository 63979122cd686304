/**
 * The page that tells how the setup became what it is, and takes edits back. Start reading at {@code EditsPage}. What an edit
 * is, and what may be taken back, stands in {@link yardlight.gateway.edit.History}.
 */
package yardlight.gateway.edits;
