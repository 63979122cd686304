/**
 * The packaged gateway under force, seen from outside only: processes killed, disks watched, several of them on one
 * database. Start reading at {@link yardlight.demo.outside.KillRoundsIT}.
 */
package yardlight.demo.outside;
