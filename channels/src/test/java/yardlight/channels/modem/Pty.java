package yardlight.channels.modem;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * A pseudo-terminal: what is written to one end comes out of the other, and the other is a serial port to whoever opens it.
 * Java cannot make one; the program {@code script} of util-linux, which Linux systems come with, does, and hands on what goes
 * over it. When that program ends, the port is gone as a modem is that somebody pulls out.
 */
final class Pty implements AutoCloseable {

    private static final String RAW_AND_ITS_NAME = "stty raw -echo; tty; exec sleep 1000000";

    private final Process script;
    private final Path port;

    private Pty(Process script, Path port) {
        this.script = script;
        this.port = port;
    }

    /** Where there is none to be had, the test says so and is skipped. */
    static Pty open() throws IOException {
        missing().ifPresent(what -> abort(what));
        Process script = new ProcessBuilder("script", "-q", "-e", "-c", RAW_AND_ITS_NAME, "/dev/null").start();
        StringBuilder name = new StringBuilder();
        for (int octet = script.getInputStream().read(); octet >= 0 && octet != '\n'; ) {
            name.append((char) octet);
            octet = script.getInputStream().read();
        }
        return new Pty(script, Path.of(name.toString().strip()));
    }

    /** What this machine lacks for one; says so aloud. */
    static Optional<String> missing() {
        String found;
        try {
            Process version = new ProcessBuilder("script", "--version")
                    .redirectErrorStream(true)
                    .start();
            found = new String(version.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            found = e.getMessage();
        }
        if (found.contains("util-linux")) {
            return Optional.empty();
        }
        String words = "SKIPPED: a pseudo-terminal needs the program script of util-linux: " + found.strip();
        System.err.println(words);
        return Optional.of(words);
    }

    Path port() {
        return port;
    }

    /** What whoever opened the port wrote to it. */
    InputStream in() {
        return script.getInputStream();
    }

    OutputStream out() {
        return script.getOutputStream();
    }

    /** The port is gone. */
    @Override
    public void close() {
        script.destroyForcibly();
        try {
            script.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
