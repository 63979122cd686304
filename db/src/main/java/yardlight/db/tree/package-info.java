/**
 * The Merkle tree of RFC 6962 and RFC 9162 over the lines of the log, as arithmetic: what is hashed, how the tree grows,
 * how a proof is made. Start reading at {@link yardlight.db.tree.Frontier}.
 *
 * <p>Knows no database.
 */
package yardlight.db.tree;
