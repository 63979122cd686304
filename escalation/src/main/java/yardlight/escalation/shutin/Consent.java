package yardlight.escalation.shutin;

import java.time.Instant;

/**
 * That the owner has turned it on for a site, by which terms. It is kept apart from the setup: a document that is copied, or
 * changed by so much as a minute, turns nothing on.
 *
 * @param terms as {@link Terms#words} said them then
 * @param by login of the owner
 */
public record Consent(String terms, String by, Instant at) {}
