package yardlight.demo.gateway;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** A gateway that runs as a child of this process and ends with it. */
public final class GatewayProcess implements AutoCloseable {

    private static final Duration LOOK_EVERY = Duration.ofMillis(40);
    private static final Duration STOP_WITHIN = Duration.ofSeconds(15);

    private final Process process;
    private final LogTail log;
    private final URI address;
    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(1)).build();

    private GatewayProcess(Process process, LogTail log, URI address) {
        this.process = process;
        this.log = log;
        this.address = address;
    }

    /** Starts it; it is not ready yet. */
    public static GatewayProcess start(Launch launch) {
        try {
            ProcessBuilder builder = new ProcessBuilder(launch.command())
                    .directory(launch.directory().toFile())
                    .redirectErrorStream(true);
            builder.environment().putAll(launch.environment());
            Process process = builder.start();
            process.getOutputStream().close();
            URI address = URI.create("http://localhost:" + launch.port());
            return new GatewayProcess(process, LogTail.follow(process.getInputStream()), address);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public URI address() {
        return address;
    }

    public long pid() {
        return process.pid();
    }

    /** Is told its last lines once it has ended, by itself or not. */
    public void onEnd(Consumer<List<String>> listener) {
        process.onExit().thenRun(() -> listener.accept(lastLines()));
    }

    public boolean alive() {
        return process.isAlive();
    }

    /** The newest lines of its output, oldest first. */
    public List<String> lastLines() {
        return log.lines();
    }

    /**
     * Waits until it says that it is ready.
     *
     * @throws IllegalStateException if it ends or is not ready in time; the message carries its last lines
     */
    public void awaitReady(Duration limit) throws InterruptedException {
        long end = System.nanoTime() + limit.toNanos();
        while (!ready()) {
            if (!process.isAlive()) {
                log.awaitEnd();
                throw new IllegalStateException("the gateway ended with code " + process.exitValue() + ":\n" + log);
            }
            if (System.nanoTime() > end) {
                throw new IllegalStateException("the gateway was not ready within " + limit + ":\n" + log);
            }
            Thread.sleep(LOOK_EVERY.toMillis());
        }
    }

    private boolean ready() throws InterruptedException {
        HttpRequest ask = HttpRequest.newBuilder(address.resolve("/actuator/health/readiness"))
                .timeout(Duration.ofSeconds(5))
                .build();
        try {
            return http.send(ask, BodyHandlers.discarding()).statusCode() == 200;
        } catch (IOException e) {
            return false; // nobody listens there yet
        }
    }

    /** Stops it, first politely. */
    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(STOP_WITHIN.toMillis(), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
