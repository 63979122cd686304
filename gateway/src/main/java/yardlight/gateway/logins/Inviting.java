package yardlight.gateway.logins;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpStatus;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import yardlight.db.person.Invitation;
import yardlight.db.person.Invitations;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.people.DoorLog;
import yardlight.gateway.problem.Problem;

/**
 * Makes invitations and uses them up. The token in the link has 128 random bits, is shown once and kept as a hash; it is good
 * for seven days and for one login.
 */
@Component
class Inviting {

    static final Duration LIFE = Duration.ofDays(7);
    static final String PATH = "/join/";

    private static final int BYTES = 16;
    private static final int ID_BYTES = 8;
    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9_-]{22}");

    private final Invitations invitations;
    private final PasswordEncoder passwords;
    private final DoorLog log;
    private final InstantSource clock;
    private final String address;
    private final SecureRandom random = new SecureRandom();

    Inviting(
            Invitations invitations,
            PasswordEncoder passwords,
            DoorLog log,
            InstantSource clock,
            @Value("${yardlight.public-url:}") String publicUrl) {
        this.invitations = invitations;
        this.passwords = passwords;
        this.log = log;
        this.clock = clock;
        this.address = publicUrl.strip().replaceAll("/+$", "");
    }

    /**
     * An invitation that was made just now.
     *
     * @param link for the one who is invited, and for nobody else
     */
    record MadeInvitation(String id, String link, Instant expiresAt) {}

    /**
     * @param here the gateway's address as the owner sees it, in case that none is set up
     */
    MadeInvitation invite(Role role, Optional<String> contact, String by, String here) {
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(BYTES));
        String id = HexFormat.of().formatHex(bytes(ID_BYTES));
        Instant now = clock.instant();
        Instant expires = now.plus(LIFE);
        invitations.add(new Invitation(id, hash(token), role, contact, by, now, expires, Optional.empty()));
        log.say(by, by + " invited " + contact.orElse("somebody") + " as " + role.word() + ", until " + expires);
        return new MadeInvitation(id, (address.isEmpty() ? here : address) + PATH + token, expires);
    }

    List<Invitation> open() {
        return invitations.open(clock.instant());
    }

    /** @throws Problem 404 when there is no such open invitation */
    void takeBack(String id, String by) {
        if (!invitations.takeBack(id)) {
            throw Problem.notFound("there is no such open invitation");
        }
        log.say(by, by + " took back an invitation");
    }

    /** @throws Problem 404 when this leads nowhere, 410 when it was used or is too old */
    Invitation behind(String token) {
        Invitation invitation = Optional.of(token)
                .filter(text -> FORM.matcher(text).matches())
                .flatMap(text -> invitations.byHash(hash(text)))
                .orElseThrow(() -> Problem.notFound("this link leads nowhere; it may have been cut short on its way"));
        if (!invitation.isOpen(clock.instant())) {
            throw gone();
        }
        return invitation;
    }

    /**
     * The invited one has chosen.
     *
     * @return false when somebody has this login
     * @throws Problem 410 when another one was faster
     */
    boolean join(Invitation invitation, String login, String password) {
        var person = new Person(login, passwords.encode(password), invitation.role(), invitation.contact(), false);
        return switch (invitations.use(invitation.tokenHash(), person, clock.instant())) {
            case GONE -> throw gone();
            case TAKEN -> false;
            case JOINED -> {
                log.say(login, login + " joined as " + person.role().word() + ", invited by " + invitation.by());
                yield true;
            }
        };
    }

    private static Problem gone() {
        return Problem.of(HttpStatus.GONE, "this invitation was used or is too old; ask for another one");
    }

    private byte[] bytes(int count) {
        var bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }

    private static String hash(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.US_ASCII));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
