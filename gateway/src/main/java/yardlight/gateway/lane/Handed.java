package yardlight.gateway.lane;

import java.util.Collection;
import java.util.concurrent.CompletableFuture;
import yardlight.db.journal.Wants;

/** A piece of work and whoever waits for it. Nobody is told before it is stored. */
final class Handed<T> {

    private final Work<T> work;
    private final CompletableFuture<T> waiting = new CompletableFuture<>();
    private T result;
    private RuntimeException failure;

    Handed(Work<T> work) {
        this.work = work;
    }

    CompletableFuture<T> waiting() {
        return waiting;
    }

    int weight() {
        return work.weight();
    }

    boolean patient() {
        return work.patient();
    }

    String about() {
        return work.about();
    }

    void wants(Wants wants, Collection<String> names) {
        work.wants(wants, names);
    }

    void take(Turn turn) {
        result = work.take(turn);
        failure = null;
    }

    /** It fails alone, once the others are stored. */
    void failed(RuntimeException because) {
        failure = because;
    }

    /** The batch is stored: tells whoever waits. */
    void answer() {
        if (failure != null) {
            waiting.completeExceptionally(failure);
        } else {
            waiting.complete(result);
        }
    }

    void giveUp(RuntimeException because) {
        waiting.completeExceptionally(because);
    }
}
