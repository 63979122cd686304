package yardlight.demo.outside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Boxes that say twice a second that they live, each until it is silenced. */
final class SilentBoxes implements AutoCloseable {

    private static final long PAUSE_MILLIS = 500;

    private final int port;
    private final Map<String, String> keys = new LinkedHashMap<>();
    private final Map<String, String> saying = new ConcurrentHashMap<>();
    private final Map<String, Long> started = new ConcurrentHashMap<>();
    private final CountDownLatch end = new CountDownLatch(1);
    private final Thread thread = new Thread(this::beat, "boxes");

    SilentBoxes(int port, Map<String, String> keys) {
        this.port = port;
        this.keys.putAll(keys);
        keys.keySet().forEach(box -> {
            started.put(box, System.nanoTime() - TimeUnit.DAYS.toNanos(3));
            saying.put(box, "");
        });
        thread.setDaemon(true);
        thread.start();
    }

    /** The box's last word, and nothing after it. */
    void gasp(String box, String feeds) throws IOException, InterruptedException {
        saying.remove(box);
        post(box, ",\"feeds\":" + feeds);
    }

    void silence(String... boxes) {
        for (String box : boxes) {
            saying.remove(box);
        }
    }

    /** It speaks again and has only just been started. */
    void startAnew(String box) {
        started.put(box, System.nanoTime());
        saying.put(box, "");
    }

    private void beat() {
        try {
            do {
                for (Map.Entry<String, String> one : saying.entrySet()) {
                    post(one.getKey(), one.getValue());
                }
            } while (!end.await(PAUSE_MILLIS, TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void post(String box, String more) throws IOException, InterruptedException {
        long uptime = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - started.get(box));
        int status = Http.beat(port, keys.get(box), "{\"uptime\":" + uptime + more + "}");
        if (status != 202) {
            throw new IOException("a heartbeat was answered with " + status);
        }
    }

    @Override
    public void close() {
        end.countDown();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(30));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
