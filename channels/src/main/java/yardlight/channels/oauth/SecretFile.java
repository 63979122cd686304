package yardlight.channels.oauth;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/** A file with a secret in it and nothing else. */
record SecretFile(Path path) {

    private static final int MOST = 16 * 1024;

    /** Without the white space around it. */
    String read() throws NoToken {
        try (InputStream in = Files.newInputStream(path)) {
            String secret = new String(in.readNBytes(MOST), StandardCharsets.US_ASCII).strip();
            if (secret.isEmpty() || !secret.matches("[!-~]+")) {
                throw new NoToken(path + " does not hold one word of ASCII");
            }
            return secret;
        } catch (NoToken e) {
            throw e;
        } catch (IOException e) {
            throw new NoToken(path + " cannot be read");
        }
    }

    /** In one step, and readable by us only: a crash leaves the one or the other. */
    void replace(String secret) throws IOException {
        Path beside = path.resolveSibling(path.getFileName() + ".new");
        Files.deleteIfExists(beside);
        if (Files.getFileAttributeView(path.toAbsolutePath().getParent(), PosixFileAttributeView.class) == null) {
            Files.createFile(beside);
        } else {
            Files.createFile(
                    beside, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        Files.writeString(beside, secret + "\n", StandardCharsets.US_ASCII);
        Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE);
    }
}
