/**
 * Copies of the database that are made while it runs. Start with {@link yardlight.db.backup.Backups}.
 *
 * <p>It must not know what is in the tables.
 */
package yardlight.db.backup;
