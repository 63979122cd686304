package yardlight.db.person;

/**
 * Somebody who may sign in.
 *
 * @param passwordHash as the password encoder wrote it, with the name of its algorithm
 */
public record Person(String login, String passwordHash, Role role) {}
