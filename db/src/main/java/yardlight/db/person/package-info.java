/**
 * The people who may sign in, who is invited to, what they came with before and who is signed in. Start reading at
 * {@link yardlight.db.person.People}.
 *
 * <p>Knows nothing of how a password is hashed, and nothing of contacts but an id: who is called need not sign in.
 */
package yardlight.db.person;
