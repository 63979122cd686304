package yardlight.db.person;

/** What became of the wish to change or remove a login. */
public enum Change {
    DONE,
    /** There is no such login. */
    UNKNOWN,
    /** Refused: nobody would be left to give logins. */
    LAST_OWNER
}
