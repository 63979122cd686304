/**
 * Everything that a gateway keeps, as one file, to be moved to another machine or database: the crate. Start reading at
 * {@link yardlight.db.moving.Crate}, then {@code MoveOut} and {@code MoveIn}. The form is in docs/decisions/moving.md.
 *
 * <p>It must not know what the tables mean, but for the log, whose tree shows whether it arrived whole.
 */
package yardlight.db.moving;
