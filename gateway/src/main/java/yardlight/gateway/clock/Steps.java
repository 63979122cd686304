package yardlight.gateway.clock;

import java.util.function.Consumer;

/** Tells of a clock that was set while the gateway ran. */
@FunctionalInterface
public interface Steps {

    /** For a clock that nobody sets. */
    Steps NONE = listener -> {};

    /**
     * @param listener is told, in words for the log, by whichever thread finds out; it must not wait
     */
    void listen(Consumer<String> listener);
}
