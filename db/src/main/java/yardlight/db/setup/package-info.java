/**
 * The setup document in all its versions. Start reading at {@link yardlight.db.setup.SetupVersions}; versions are added
 * by the journal, in the same transaction as what the change brings about.
 *
 * <p>Knows nothing of what is in the document.
 */
package yardlight.db.setup;
