package yardlight.demo.bench;

import java.time.Duration;

/**
 * What a process has cost between two looks, as the kernel counts it: user and system, all threads, compiler and collector included.
 *
 * @param used processor time
 * @param passed time on the wall
 */
record Cpu(Duration used, Duration passed) {

    /** A running count of one process. */
    static final class Meter {

        private final ProcessHandle process;
        private Duration used;
        private long at;

        Meter(long pid) {
            process = ProcessHandle.of(pid).orElseThrow();
            lap();
        }

        /** Since the last look. */
        Cpu lap() {
            Duration now = process.info()
                    .totalCpuDuration()
                    .orElseThrow(() -> new IllegalStateException("this system does not tell what a process costs"));
            long time = System.nanoTime();
            Cpu cpu = used == null ? null : new Cpu(now.minus(used), Duration.ofNanos(time - at));
            used = now;
            at = time;
            return cpu;
        }
    }

    /** Processors kept busy on average. */
    double cores() {
        return (double) used.toNanos() / passed.toNanos();
    }

    double microsFor(int things) {
        return used.toNanos() / 1_000.0 / things;
    }
}
