/**
 * What it takes until a commit has reached the disk, and which database this is. Start reading at
 * {@link yardlight.db.disk.Disk}.
 *
 * <p>Knows no table.
 */
package yardlight.db.disk;
