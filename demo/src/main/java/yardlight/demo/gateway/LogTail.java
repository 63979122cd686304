package yardlight.demo.gateway;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Reads what a process prints, so that it never blocks on a full pipe, and keeps the end of it. */
final class LogTail {

    private static final int KEPT = 40;

    private final Deque<String> lines = new ArrayDeque<>();
    private final Thread reader;

    private LogTail(InputStream output) {
        reader = new Thread(() -> read(output), "gateway-log");
        reader.setDaemon(true);
    }

    static LogTail follow(InputStream output) {
        LogTail tail = new LogTail(output);
        tail.reader.start();
        return tail;
    }

    private void read(InputStream output) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(output, StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                keep(line);
            }
        } catch (IOException e) {
            keep("(its output broke off: " + e.getMessage() + ")");
        }
    }

    private synchronized void keep(String line) {
        lines.addLast(line);
        if (lines.size() > KEPT) {
            lines.removeFirst();
        }
    }

    synchronized List<String> lines() {
        return List.copyOf(lines);
    }

    /** Once the process has ended there is little left to read. */
    void awaitEnd() throws InterruptedException {
        reader.join(Duration.ofSeconds(2).toMillis());
    }

    @Override
    public String toString() {
        return String.join("\n", lines());
    }
}
