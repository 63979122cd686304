/**
 * Lets go of what is older than it has to be. Start reading at {@link yardlight.db.retention.Retention}.
 */
package yardlight.db.retention;
