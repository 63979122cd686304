/**
 * What is known of boxes, to be read. Start reading at {@link yardlight.db.box.Boxes}; the journal writes.
 */
package yardlight.db.box;
