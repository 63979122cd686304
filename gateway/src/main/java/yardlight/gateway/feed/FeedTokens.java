package yardlight.gateway.feed;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import yardlight.db.feed.Feed;
import yardlight.db.feed.Feeds;

/** Makes and checks the addresses of calendars. The token has 128 random bits: nobody tries them out. */
@Component
class FeedTokens {

    static final String PATH = "/calendar/";
    static final String ENDING = ".ics";

    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9_-]{22}");
    private static final int BYTES = 16;

    private final Feeds feeds;
    private final InstantSource clock;
    private final String address;
    private final SecureRandom random = new SecureRandom();

    FeedTokens(Feeds feeds, InstantSource clock, @Value("${yardlight.public-url:}") String publicUrl) {
        this.feeds = feeds;
        this.clock = clock;
        this.address = publicUrl.strip().replaceAll("/+$", "");
    }

    /**
     * Makes an address; the one before leads nowhere from now on.
     *
     * @param here the gateway's address as whoever asks sees it, in case that none is set up
     */
    String make(String contact, String by, String here) {
        var bytes = new byte[BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        feeds.put(new Feed(contact, hash(token), by, clock.instant()));
        return (address.isEmpty() ? here : address) + PATH + token + ENDING;
    }

    /** Whose calendar is read by this token; empty when it leads nowhere (any more). */
    Optional<String> contact(String token) {
        return Optional.of(token)
                .filter(text -> FORM.matcher(text).matches())
                .flatMap(text -> feeds.byHash(hash(text)))
                .map(Feed::contact);
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
