/**
 * Changes the setup a piece at a time, as the pages do. Start reading at {@link yardlight.gateway.edit.Desk}.
 *
 * <p>A piece is one object of one list of the setup document: a ladder, a contact. What it must be stands in
 * {@link yardlight.gateway.setup.SetupReader} and nowhere here: a changed document is read as a whole, as if its owner had
 * put it.
 */
package yardlight.gateway.edit;
