package yardlight.demo.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * A closed loop: each connection asks again as soon as it has its answer, until the time is up or the requests are.
 *
 * @param port the gateway's
 * @param connections how many ask at the same time
 * @param length after which nobody asks again; each has asked once
 */
record Load(int port, int connections, Duration length) {

    /** Where the requests come from; called by all connections at once. */
    interface Requests {

        /**
         * @param connection which connection asks, from 0
         * @param number how often it has asked before
         * @return the bytes to send; null when there are no more
         */
        byte[] next(int connection, int number);
    }

    /**
     * What came of it.
     *
     * @param answers how many by status
     * @param nanos each answer's time
     * @param seconds from the first request to the last answer
     */
    record Round(Map<Integer, Integer> answers, long[] nanos, double seconds) {

        /** Answers of this status a second. Any other status is a mistake in the measurement. */
        double perSecond(int status) {
            int wanted = answers.getOrDefault(status, 0);
            if (wanted == 0 || wanted < nanos.length) {
                throw new IllegalStateException("all answers must be " + status + ": " + answers);
            }
            return wanted / seconds;
        }
    }

    private record Share(Map<Integer, Integer> answers, List<Long> nanos) {}

    Round run(Requests requests) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(connections);
        try {
            long begin = System.nanoTime();
            List<Callable<Share>> work = new ArrayList<>();
            for (int i = 0; i < connections; i++) {
                int connection = i;
                work.add(() -> ask(connection, requests, begin + length.toNanos()));
            }
            List<Share> shares = new ArrayList<>();
            for (Future<Share> share : threads.invokeAll(work)) {
                shares.add(share.get());
            }
            return joined(shares, (System.nanoTime() - begin) / 1e9);
        } finally {
            threads.shutdownNow();
        }
    }

    private Share ask(int connection, Requests requests, long end) throws IOException {
        Share share = new Share(new TreeMap<>(), new ArrayList<>());
        try (HttpConnection http = new HttpConnection(port)) {
            byte[] request = requests.next(connection, 0);
            for (int number = 1; request != null; number++) {
                long asked = System.nanoTime();
                int status = http.exchange(request);
                long answered = System.nanoTime();
                share.nanos().add(answered - asked);
                share.answers().merge(status, 1, Integer::sum);
                request = answered < end ? requests.next(connection, number) : null;
            }
        }
        return share;
    }

    private static Round joined(List<Share> shares, double seconds) {
        Map<Integer, Integer> answers = new TreeMap<>();
        shares.forEach(share -> share.answers().forEach((status, count) -> answers.merge(status, count, Integer::sum)));
        long[] nanos = shares.stream()
                .flatMap(share -> share.nanos().stream())
                .mapToLong(Long::longValue)
                .toArray();
        return new Round(answers, nanos, seconds);
    }
}
