/**
 * Copies of an H2 database that are made while it runs, and how one is put back. Start with
 * {@link yardlight.db.backup.Backups}, then {@link yardlight.db.backup.Restore}.
 *
 * <p>It must not know what is in the tables.
 */
package yardlight.db.backup;
