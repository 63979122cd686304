package yardlight.demo.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yardlight.demo.bench.ClassDataArchive;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;
import yardlight.demo.gateway.OwnerDoor;

/** One packaged gateway that is started, killed and started again on the same port and the same record. */
final class Node implements AutoCloseable {

    static final String PASSWORD = "only-for-the-tests";
    private static final Duration READY_WITHIN = Duration.ofSeconds(120);
    private static ClassDataArchive archive;

    private final int port = FreePort.any();
    private final Map<String, String> properties;
    private GatewayProcess process;

    /**
     * @param store what {@link Store#anew} gave
     */
    Node(Path home, Map<String, String> store, Inbox inbox) {
        properties = new HashMap<>(store);
        properties.put("yardlight.home", home.toString());
        properties.put("yardlight.owner-password", PASSWORD);
        // The boxes of these tests post as fast as they can.
        properties.put("yardlight.allowance.burst", "1000000000");
        properties.put("yardlight.mail.from", "yardlight@gateway.example");
        properties.put("spring.mail.host", "127.0.0.1");
        properties.put("spring.mail.port", String.valueOf(inbox.port()));
    }

    void start() throws IOException, InterruptedException {
        ClassDataArchive made = archive();
        process = GatewayProcess.start(new Launch(made.jar(), made.directory(), made.options(), port, properties));
    }

    void awaitReady() throws InterruptedException {
        process.awaitReady(READY_WITHIN);
    }

    /** {@code kill -9}; comes back when nothing is left of it. */
    void kill() {
        ProcessHandle.of(process.pid()).ifPresent(victim -> {
            victim.destroyForcibly();
            victim.onExit().join();
        });
    }

    /** Stops all of it at once, in the middle of whatever it does: to others it is as if its machine had vanished. */
    void freeze() throws IOException, InterruptedException {
        signal("STOP");
    }

    /** It goes on as if nothing had been. */
    void thaw() throws IOException, InterruptedException {
        signal("CONT");
    }

    private void signal(String name) throws IOException, InterruptedException {
        int code = new ProcessBuilder("kill", "-" + name, String.valueOf(process.pid()))
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException("kill -" + name + " ended with " + code);
        }
    }

    /** Asks it to stop ({@code SIGTERM}) and waits until it has. */
    void stop() {
        process.close();
    }

    int port() {
        return port;
    }

    long pid() {
        return process.pid();
    }

    OwnerDoor owner() {
        return new OwnerDoor(process.address(), PASSWORD);
    }

    List<String> lastLines() {
        return process == null ? List.of() : process.lastLines();
    }

    @Override
    public void close() {
        if (process != null) {
            process.close();
        }
    }

    /** Made once: a start with it takes half the time, and there are many. */
    private static synchronized ClassDataArchive archive() throws IOException, InterruptedException {
        if (archive == null) {
            Path folder = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "yardlight-outside-");
            archive = ClassDataArchive.make(Launch.jar(""), folder.resolve("extracted"));
        }
        return archive;
    }
}
