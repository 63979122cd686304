package yardlight.channels.oauth;

import java.nio.file.Path;

/** A token that somebody else puts into a file in time; read each time that it is needed. */
public final class TokenFile implements Tokens {

    private final SecretFile file;

    public TokenFile(Path path) {
        this.file = new SecretFile(path);
    }

    @Override
    public String token() throws NoToken {
        return file.read();
    }

    @Override
    public void refused(String token) {
        // Whoever writes the file writes the next one, too.
    }
}
