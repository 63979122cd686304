/**
 * Readings: how they lie in the database, how they get smaller with age, and how a stretch of them is read back. Start
 * reading at {@link yardlight.db.reading.Readings}, then {@link yardlight.db.reading.PackedDay}.
 *
 * <p>They are written by the journal. Knows no unit but as a word.
 */
package yardlight.db.reading;
