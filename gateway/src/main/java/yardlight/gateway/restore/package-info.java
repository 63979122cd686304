/**
 * What follows when a backup is put in place of the database. Start reading at {@code RestoreAtStart}, which runs before
 * anything has the database open, then {@code Restoration}, which runs when the lane does.
 */
package yardlight.gateway.restore;
