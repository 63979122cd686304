package yardlight.demo.gateway;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/**
 * The gateway's time as one sees it from outside: read off the answers to heartbeats, carried on with this machine's
 * clock at the gateway's speed. It is ahead by the way
 * of one question, times the speed, and never behind.
 */
public final class GatewayClock implements InstantSource {

    private record Anchor(BoxDoor.Beat beat, double speed) {}

    private volatile Anchor anchor;

    /**
     * Sets the clock by two answers to heartbeats.
     *
     * @param speed how fast the gateway was told to run
     * @throws IllegalStateException if it does not run at that speed, within a tenth
     */
    public void set(BoxDoor.Beat earlier, BoxDoor.Beat later, double speed) {
        double seen =
                (double) Duration.between(earlier.received(), later.received()).toNanos()
                        / (later.nanos() - earlier.nanos());
        if (Math.abs(seen / speed - 1) > 0.1) {
            throw new IllegalStateException(
                    String.format("the gateway's clock runs at %.1f times, not at %.1f", seen, speed));
        }
        anchor = new Anchor(later, speed);
    }

    public boolean isSet() {
        return anchor != null;
    }

    @Override
    public Instant instant() {
        Anchor from = anchor;
        if (from == null) {
            throw new IllegalStateException("the gateway's clock is not known yet");
        }
        long passed = System.nanoTime() - from.beat().nanos();
        return from.beat().received().plusNanos((long) (passed * from.speed()));
    }

    /** Comes back when the gateway's clock has reached this instant; at once if it has passed. */
    public void awaitInstant(Instant instant) throws InterruptedException {
        for (Duration left = real(instant); left.compareTo(Duration.ZERO) > 0; left = real(instant)) {
            Thread.sleep(left.toMillis() + 1);
        }
    }

    private Duration real(Instant instant) {
        return real(Duration.between(instant(), instant));
    }

    /** How long this much of the gateway's time takes here. */
    public Duration real(Duration gatewayTime) {
        return Duration.ofNanos((long) (gatewayTime.toNanos() / anchor.speed()));
    }
}
