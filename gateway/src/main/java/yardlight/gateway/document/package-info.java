/**
 * Reads what came in: bounded bytes, a tree, and from the tree typed fields with every mistake and its JSON pointer.
 * Start reading at {@link yardlight.gateway.document.Fields}. The tree is our own and small, because numbers must stay
 * as they were written and because a mistake has to be collected, not thrown. Knows nothing of alarms or setups.
 */
package yardlight.gateway.document;
