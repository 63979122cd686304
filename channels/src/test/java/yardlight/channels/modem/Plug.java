package yardlight.channels.modem;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A port that is there or not. It has one name, a link, however often it is pulled out and put in again. */
final class Plug {

    /** Whoever is at its other end. */
    interface Hearing {
        void hear(char octet);
    }

    private final Path folder;
    private volatile Pty pty;

    Plug() throws IOException {
        folder = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "modem");
    }

    String name() {
        return link().toString();
    }

    private Path link() {
        return folder.resolve("port");
    }

    void putIn(Hearing hearing) {
        pullOut();
        try {
            Pty mine = Pty.open();
            pty = mine;
            Files.deleteIfExists(link());
            Files.createSymbolicLink(link(), mine.port());
            Thread reader = new Thread(() -> read(mine, hearing), "stand-in-modem");
            reader.setDaemon(true);
            reader.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void pullOut() {
        if (pty != null) {
            pty.close();
        }
    }

    void remove() throws IOException {
        pullOut();
        Files.deleteIfExists(link());
        Files.deleteIfExists(folder);
    }

    void write(String octets) {
        try {
            OutputStream out = pty.out();
            out.write(octets.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
        } catch (IOException e) {
            // It was pulled out.
        }
    }

    private void read(Pty mine, Hearing hearing) {
        try {
            for (int octet = mine.in().read();
                    octet >= 0 && mine == pty;
                    octet = mine.in().read()) {
                hearing.hear((char) octet);
            }
        } catch (IOException e) {
            // It was pulled out.
        }
    }
}
