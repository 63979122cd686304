/**
 * The people who may sign in. Start reading at {@link yardlight.db.person.People}.
 *
 * <p>Knows nothing of how a password is hashed, and nothing of contacts: who is called need not sign in.
 */
package yardlight.db.person;
