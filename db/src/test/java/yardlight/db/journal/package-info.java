/** The journal on both databases, held against the engine's own picture of the same night. */
package yardlight.db.journal;
