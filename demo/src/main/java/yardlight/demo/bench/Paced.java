package yardlight.demo.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.LockSupport;

/**
 * An open loop: things are done at a steady rate, whether those before are finished or not, as far as the connections go.
 *
 * @param port where to
 * @param connections kept open; thing {@code n} goes over connection {@code n} modulo these
 * @param perSecond the rate
 */
record Paced(int port, int connections, double perSecond) {

    /** One thing to do. */
    interface Thing {

        /**
         * @param number from 0
         * @param wanted the {@link System#nanoTime()} at which it should begin; when the connection was not free it is later
         */
        void run(HttpConnection http, int number, long wanted) throws Exception;
    }

    /** Comes back when all are done. */
    void run(int count, Thing thing) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(connections);
        long begin = System.nanoTime() + 1_000_000;
        try {
            List<Callable<Void>> work = new ArrayList<>();
            for (int i = 0; i < connections; i++) {
                int first = i;
                work.add(() -> {
                    share(first, count, begin, thing);
                    return null;
                });
            }
            for (Future<Void> share : threads.invokeAll(work)) {
                share.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private void share(int first, int count, long begin, Thing thing) throws Exception {
        try (HttpConnection http = new HttpConnection(port)) {
            for (int number = first; number < count; number += connections) {
                long wanted = begin + (long) (number * 1e9 / perSecond);
                for (long left = wanted - System.nanoTime(); left > 0; left = wanted - System.nanoTime()) {
                    LockSupport.parkNanos(left);
                }
                thing.run(http, number, wanted);
            }
        }
    }

    /** An answer that must be 202. */
    static void accepted(int status) {
        if (status != 202) {
            throw new IllegalStateException("an answer must be 202: " + status);
        }
    }
}
