package yardlight.demo.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;
import org.springframework.util.FileSystemUtils;

/**
 * Some rounds on one record: each time the gateway is killed at a moment that the seed decides, while boxes post. At the
 * end it is left alone until all is told, and everything is counted.
 */
final class Block {

    /** In so many places each round something new may happen. */
    private static final int PLACES_EACH = 24;

    private static final int LONGEST_MILLIS = 2000;
    private static final int ONE_IN = 6;

    private final int rounds;
    private final long seed;
    private final Random random;

    Block(int rounds, long seed) {
        this.rounds = rounds;
        this.seed = seed;
        random = new Random(seed);
    }

    void run(Store store, Tally tally) throws IOException, SQLException, InterruptedException {
        Path home = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "yardlight-killed-");
        int places = rounds * PLACES_EACH;
        try (Inbox inbox = Inbox.quick();
                Node node = new Node(home, store.anew(), inbox)) {
            node.start();
            node.awaitReady();
            node.owner().putSetup(new Places(places, Duration.ofMinutes(15)).document());
            List<String> keys = IntStream.range(0, places)
                    .mapToObj(Places::box)
                    .map(node.owner()::newKey)
                    .toList();
            rounds(node, new Fleet(List.of(node.port()), keys, seed), inbox, tally);
        } finally {
            FileSystemUtils.deleteRecursively(home);
        }
    }

    private void rounds(Node node, Fleet fleet, Inbox inbox, Tally tally) throws IOException, InterruptedException {
        try {
            for (int i = 0; i < rounds; i++) {
                round(node, fleet);
                tally.round();
            }
            node.awaitReady();
            fleet.awaitAnswers();
            count(node, fleet, inbox, tally);
        } finally {
            fleet.end();
        }
    }

    /** Most die at work, some already while they start. */
    private void round(Node node, Fleet fleet) throws IOException, InterruptedException {
        fleet.allow(PLACES_EACH);
        if (random.nextInt(ONE_IN) > 0) {
            node.awaitReady();
        }
        int millis = 1 + random.nextInt(LONGEST_MILLIS);
        CompletableFuture.runAsync(node::kill, CompletableFuture.delayedExecutor(millis, TimeUnit.MILLISECONDS))
                .join();
        fleet.killed();
        node.start();
    }

    private static void count(Node node, Fleet fleet, Inbox inbox, Tally tally)
            throws IOException, InterruptedException {
        Awaitility.await()
                .atMost(Duration.ofMinutes(2))
                .pollInterval(Duration.ofMillis(250))
                .until(() -> {
                    Map<String, Seen> now = Seen.all(node.port());
                    return now.size() >= fleet.begun() && now.values().stream().allMatch(Seen::told);
                });
        Map<String, Seen> seen = Seen.all(node.port());
        for (int place = 0; place < fleet.begun(); place++) {
            Seen one = seen.getOrDefault(Places.site(place), new Seen(0, List.of()));
            tally.alarm(place, fleet, one, inbox.texts(Places.first(place)));
        }
        if (!fleet.wrong().isEmpty()) {
            tally.broken.add("answers that boxes do not expect: " + fleet.wrong());
        }
    }
}
