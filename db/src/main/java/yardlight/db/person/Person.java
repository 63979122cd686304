package yardlight.db.person;

import java.util.Optional;

/**
 * Somebody who may sign in.
 *
 * @param passwordHash as the password encoder wrote it, with the name of its algorithm
 * @param contact id of the contact that they are in the setup, where somebody has said so
 * @param weak whether the password was taken although the rules are against it, so that another one is asked for
 */
public record Person(String login, String passwordHash, Role role, Optional<String> contact, boolean weak) {

    public Person(String login, String passwordHash, Role role) {
        this(login, passwordHash, role, Optional.empty(), false);
    }

    public Person as(Role other) {
        return new Person(login, passwordHash, other, contact, weak);
    }

    public Person of(Optional<String> other) {
        return new Person(login, passwordHash, role, other, weak);
    }

    /** With a password that the rules allow. */
    public Person withPassword(String hash) {
        return new Person(login, hash, role, contact, false);
    }
}
