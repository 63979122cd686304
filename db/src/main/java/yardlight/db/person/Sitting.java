package yardlight.db.person;

import java.time.Instant;

/**
 * The time from a sign-in to its end.
 *
 * @param id by which its session knows it; not the session's own id
 * @param heardAt when something was last asked for in it, within a minute
 */
public record Sitting(String id, String login, String address, String agent, Instant beganAt, Instant heardAt) {}
