package yardlight.escalation.wording;

/**
 * Somebody signed in with something that their login was never used with before.
 *
 * @param program whether it was a program, and no browser
 * @param address where it came from, as the gateway sees it
 */
public record SignIn(String login, boolean program, String address) {}
