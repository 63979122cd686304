package yardlight.channels.http;

/** What we are known by to the provider. Its text form keeps it back. */
public record Secret(String value) {

    private static final int LONGEST = 4_096;

    public Secret {
        if (value.isEmpty() || value.length() > LONGEST || value.chars().anyMatch(c -> c <= ' ' || c > '~')) {
            throw new IllegalArgumentException("secret must be 1 to " + LONGEST
                    + " printable ASCII characters without a space, and has " + value.length() + " characters");
        }
    }

    @Override
    public String toString() {
        return "Secret[hidden]";
    }
}
