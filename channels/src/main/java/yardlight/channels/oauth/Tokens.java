package yardlight.channels.oauth;

/** Where a token comes from. May be used by any number of threads at once. */
public interface Tokens {

    /**
     * One that is good for now. Blocks if it has to be got, for a bounded time.
     *
     * @throws NoToken with a reason that has no secret in it
     */
    String token() throws NoToken;

    /** The server did not take this one, so that the next is to be another. */
    void refused(String token);
}
