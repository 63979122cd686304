package yardlight.gateway.clock;

/** Has a thread without which the gateway does not do its job. */
@FunctionalInterface
public interface Pulsing {

    Pulse pulse();
}
