package yardlight.gateway.feed;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.secret.Secrets;
import yardlight.db.setup.SetupEdit;
import yardlight.db.setup.SetupVersions;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.sentence.Locales;
import yardlight.gateway.setup.SetupInForce;

/** Hands out a person's turns to whoever has the address. */
@RestController
class FeedController {

    private static final String SEED = "calendar-ids";
    private static final int SEED_BYTES = 16;

    private final FeedTokens tokens;
    private final SetupInForce inForce;
    private final SetupVersions versions;
    private final Secrets secrets;
    private final MessageSource words;
    private final InstantSource clock;

    FeedController(
            FeedTokens tokens,
            SetupInForce inForce,
            SetupVersions versions,
            Secrets secrets,
            MessageSource words,
            InstantSource clock) {
        this.tokens = tokens;
        this.inForce = inForce;
        this.versions = versions;
        this.secrets = secrets;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping(path = FeedTokens.PATH + "{token}" + FeedTokens.ENDING)
    ResponseEntity<String> show(@PathVariable String token) {
        Setup setup = inForce.setup();
        Contact contact = tokens.contact(token)
                .flatMap(id -> Optional.ofNullable(setup.contacts().get(id)))
                .orElseThrow(() -> Problem.notFound("this address leads nowhere; it may have been revoked"));
        Instant now = clock.instant();
        var tongue = new Tongue(words, Locales.of(contact.language()));
        byte[] seed = secrets.get(SEED, FeedController::fresh, now);
        var calendar = new TurnCalendar(setup, tongue, seed, edited());
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, "text/calendar;charset=UTF-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"turns.ics\"")
                .body(CalendarText.of(calendar.of(contact, now)));
    }

    private TurnCalendar.Edited edited() {
        List<SetupEdit> newest = versions.edits(Integer.MAX_VALUE, 1);
        return newest.isEmpty()
                ? new TurnCalendar.Edited(0, Instant.EPOCH)
                : new TurnCalendar.Edited(newest.get(0).version(), newest.get(0).at());
    }

    private static byte[] fresh() {
        var bytes = new byte[SEED_BYTES];
        new SecureRandom().nextBytes(bytes);
        return bytes;
    }
}
