package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged gateway in a process of its own, as its owner runs it: what it prints is kept, and its exit code seen. */
public final class JarGateway implements AutoCloseable {

    private static final Path JAR = Path.of("target", "yardlight.jar");
    private static final Duration LIMIT = Duration.ofSeconds(Integer.getInteger("yardlight.jar.seconds", 120));
    private static final int USUAL_HEAP = 128;
    private static final String A_PORT = "--server.port=";
    private static final Pattern PORT = Pattern.compile("Tomcat started on ports? (\\d+)");

    private final Process process;
    private final Path out;

    private JarGateway(int megabytes, Path home, String... more) throws IOException {
        assertThat(JAR).as("the packaged gateway").exists();
        // One that is killed does not clear up what it has laid down for itself.
        Path folder = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "jar");
        out = folder.resolve("out.txt");
        var command = new ArrayList<String>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-Djava.io.tmpdir=" + folder,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:+ExitOnOutOfMemoryError",
                "-jar",
                JAR.toString(),
                "--yardlight.home=" + home,
                "--yardlight.owner-password=" + GatewayTest.PASSWORD));
        command.addAll(List.of(more));
        if (command.stream().noneMatch(argument -> argument.startsWith(A_PORT))) {
            command.add(A_PORT + "0");
        }
        process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
    }

    /** Begins to start one. */
    public static JarGateway begin(Path home, String... more) {
        return begin(USUAL_HEAP, home, more);
    }

    private static JarGateway begin(int megabytes, Path home, String... more) {
        try {
            return new JarGateway(megabytes, home, more);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Starts one and waits until it is ready. */
    public static JarGateway ready(Path home, String... more) {
        return ready(USUAL_HEAP, home, more);
    }

    /**
     * The same with another heap than the docs say.
     *
     * @param megabytes of the heap
     */
    public static JarGateway ready(int megabytes, Path home, String... more) {
        JarGateway gateway = begin(megabytes, home, more);
        await().atMost(LIMIT).until(() -> gateway.said().contains("Started YardlightApplication") || gateway.ended());
        assertThat(gateway.ended()).as(gateway.said()).isFalse();
        // Started is said before the owner's login is made, and ready is what a user waits for.
        await().atMost(LIMIT)
                .until(() -> gateway.web().get("/actuator/health/readiness").statusCode() == 200);
        return gateway;
    }

    public Web web() {
        Matcher port = PORT.matcher(said());
        assertThat(port.find()).as(said()).isTrue();
        return new Web(Integer.parseInt(port.group(1)));
    }

    /** What it has printed so far. */
    public String said() {
        try {
            return Files.readString(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean ended() {
        return !process.isAlive();
    }

    /** Waits until it has ended by itself. */
    public int exitCode() {
        try {
            assertThat(process.waitFor(LIMIT.toSeconds(), TimeUnit.SECONDS))
                    .as("it ended by itself")
                    .isTrue();
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } finally {
            process.destroyForcibly();
        }
    }

    /** {@code kill -9}; comes back when nothing is left of it. */
    public void kill() {
        process.toHandle().destroyForcibly();
        exitCode();
    }

    /** Asks it to stop, as a supervisor does, and waits until it has. */
    @Override
    public void close() {
        process.destroy();
        exitCode();
    }
}
