package yardlight.gateway.page;

/**
 * What every page knows of whoever looks at it.
 *
 * @param login empty when nobody is signed in
 * @param hand whether they may acknowledge and shelve; an owner may
 * @param language {@code en} or {@code es}
 */
public record Shell(String login, boolean owner, boolean hand, String language) {}
