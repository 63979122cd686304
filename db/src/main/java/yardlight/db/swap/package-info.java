/** Reads what turns people asked others to take. Start reading at {@link yardlight.db.swap.Swaps}. It writes nothing. */
package yardlight.db.swap;
