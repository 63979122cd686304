package yardlight.channels.modem;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Remembers that a PIN was tried, from before it is, so that a wrong one is tried once: three lock the card. In a file, for a
 * gateway that is stopped is started again by its supervisor, three times in half a minute.
 *
 * <p>The file has a digest of the PIN. Whoever reads it can find the PIN out, as there are so few, and so only the gateway's
 * user may.
 */
final class PinTries {

    private static final Logger LOG = LoggerFactory.getLogger(PinTries.class);

    private static final int SALT = 16;
    private static final String UNREADABLE = "?";

    private final Optional<Path> file;
    private Optional<String> tried;

    PinTries(Optional<Path> file) {
        this.file = file;
        this.tried = file.filter(Files::exists).map(PinTries::read);
    }

    /** Whether this very PIN was tried and nobody knows that it was taken; a file that cannot be read speaks against any. */
    synchronized boolean refused(String pin) {
        return tried.filter(
                        before -> before.equals(UNREADABLE) || before.equals(digest(before.substring(0, SALT), pin)))
                .isPresent();
    }

    /** It will be tried now. */
    synchronized void trying(String pin) {
        byte[] salt = new byte[SALT / 2];
        new SecureRandom().nextBytes(salt);
        tried = Optional.of(digest(HexFormat.of().formatHex(salt), pin));
        file.ifPresent(place -> write(place, tried.get()));
    }

    /** The card is open: it counts from three again. */
    synchronized void taken() {
        if (tried.isEmpty()) {
            return;
        }
        tried = Optional.empty();
        file.ifPresent(place -> {
            try {
                Files.deleteIfExists(place);
            } catch (IOException e) {
                LOG.warn("{} cannot be removed: {}", place, e.toString());
            }
        });
    }

    private static String read(Path place) {
        try {
            String text = Files.readString(place, StandardCharsets.US_ASCII).strip();
            return text.length() > SALT ? text : UNREADABLE;
        } catch (IOException e) {
            LOG.warn("{} cannot be read: {}", place, e.toString());
            return UNREADABLE;
        }
    }

    private static void write(Path place, String text) {
        try {
            Files.deleteIfExists(place);
            if (place.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        place, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.writeString(place, text, StandardCharsets.US_ASCII);
        } catch (IOException e) {
            LOG.warn("{} cannot be written: until the gateway stops it is known that a PIN was tried", place, e);
        }
    }

    private static String digest(String salt, String pin) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return salt + HexFormat.of().formatHex(digest.digest((salt + pin).getBytes(StandardCharsets.US_ASCII)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
