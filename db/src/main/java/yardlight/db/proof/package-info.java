/**
 * What shows that people can be reached, for pages and answers. Start reading at {@link yardlight.db.proof.KnownLines}.
 *
 * <p>Only reads: the rows are written by the journal. What proves a line is not known here.
 */
package yardlight.db.proof;
