package yardlight.gateway.dispatch;

import java.time.Duration;
import java.time.Instant;

/**
 * What is known of a carrier by what became of our attempts, and so whether messages are handed to it. It is broken by
 * failures that every message would have met; then somebody knocks now and then instead, less and less often, and when a
 * knock is answered one message goes ahead of the others.
 */
sealed interface Circuit {

    /** All is well: everything goes. */
    record Closed(int failures) implements Circuit {

        @Override
        public Circuit passed() {
            return WELL;
        }

        @Override
        public Circuit failed(Instant now) {
            return failures + 1 < MOST_FAILURES ? new Closed(failures + 1) : open(now, 0);
        }
    }

    /**
     * Nothing goes.
     *
     * @param until when to knock next
     * @param knocks how many were in vain
     */
    record Open(Instant until, int knocks) implements Circuit {

        /** What was under way when it broke was taken after all. */
        @Override
        public Circuit passed() {
            return WELL;
        }

        /** It was under way when it broke, and says nothing new. */
        @Override
        public Circuit failed(Instant now) {
            return this;
        }

        /** A clock that was put back does not make this wait for longer than it ever would. */
        boolean due(Instant now) {
            return !now.isBefore(until) || until.isAfter(now.plus(LONGEST));
        }

        Circuit answered() {
            return new Trial(knocks);
        }

        Circuit inVain(Instant now) {
            return open(now, knocks + 1);
        }
    }

    /** One message goes; what becomes of it decides. */
    record Trial(int knocks) implements Circuit {

        @Override
        public Circuit passed() {
            return WELL;
        }

        @Override
        public Circuit failed(Instant now) {
            return open(now, knocks + 1);
        }
    }

    int MOST_FAILURES = 3;
    Duration LONGEST = Backoff.after(Integer.MAX_VALUE);
    Circuit WELL = new Closed(0);

    /** After an attempt that the carrier answered for the line's sake, whatever it said. */
    Circuit passed();

    /** After an attempt that failed as every other would have. */
    Circuit failed(Instant now);

    private static Circuit open(Instant now, int knocks) {
        return new Open(now.plus(Backoff.after(knocks)), knocks);
    }
}
