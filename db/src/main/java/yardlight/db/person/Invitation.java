package yardlight.db.person;

import java.time.Instant;
import java.util.Optional;

/**
 * Somebody is asked to choose a login.
 *
 * @param id by which it is taken back; says nothing about the token
 * @param tokenHash of what stands in its link, up to 64 characters
 * @param contact id of the contact that they are in the setup
 * @param by the login that invites
 * @param expiresAt from when on it is not good any more
 */
public record Invitation(
        String id,
        String tokenHash,
        Role role,
        Optional<String> contact,
        String by,
        Instant invitedAt,
        Instant expiresAt,
        Optional<Instant> usedAt) {

    public boolean isOpen(Instant now) {
        return usedAt.isEmpty() && now.isBefore(expiresAt);
    }
}
