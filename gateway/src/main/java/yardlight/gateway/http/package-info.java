/**
 * Sets up a channel {@code http-<name>} for each provider in the gateway's properties, {@code yardlight.http.<name>}. Start
 * reading at {@code HttpChannels}.
 *
 * <p>A provider that cannot be used keeps the gateway from starting, and the reason is said. One without an address is a
 * channel all the same, so that a setup may name it; messages wait until then.
 */
package yardlight.gateway.http;
