package yardlight.gateway.watch;

import java.util.Optional;

/** One thing without which this gateway does not do its work. */
@FunctionalInterface
interface Vital {

    /** What is wrong with it in a few words, if anything is; comes back in bounded time. What it throws is trouble as well. */
    Optional<String> trouble();
}
