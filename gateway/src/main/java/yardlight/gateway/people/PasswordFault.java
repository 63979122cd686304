package yardlight.gateway.people;

/** Why a password is not taken, in words for a program; pages have their own, by {@link #key}. */
public enum PasswordFault {
    SHORT("must be at least " + PasswordRules.SHORTEST + " characters"),
    LONG("must be at most " + PasswordRules.LONGEST + " characters"),
    COMMON(
            "is one of the first that somebody who guesses would try; a few words that do not belong together are better"),
    NAME("must not be the name of the login, of this program or of a site, once or over and over");

    private final String words;

    PasswordFault(String words) {
        this.words = words;
    }

    /** What goes behind "the password". */
    public String words() {
        return words;
    }

    /** Under which a page's words for it are found. */
    public String key() {
        return "password." + name().toLowerCase(java.util.Locale.ROOT);
    }
}
