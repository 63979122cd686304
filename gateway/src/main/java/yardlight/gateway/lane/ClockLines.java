package yardlight.gateway.lane;

import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import org.springframework.beans.factory.DisposableBean;
import yardlight.escalation.Entry;
import yardlight.gateway.clock.Steps;

/** Puts into the log that the machine's clock was set: the lines behind that one go by another time than those before. */
final class ClockLines implements DisposableBean {

    /** The lane takes nothing while the database is away, and before it starts. */
    private static final Executor LATER = CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS);

    private final LogBook book;
    private volatile boolean over;

    ClockLines(Steps steps, LogBook book) {
        this.book = book;
        steps.listen(this::put);
    }

    private void put(String words) {
        book.put(new Entry(Entry.What.CLOCK, Map.of(), words)).whenComplete((stored, failure) -> {
            if (failure != null && !over) {
                LATER.execute(() -> put(words));
            }
        });
    }

    @Override
    public void destroy() {
        over = true;
    }
}
