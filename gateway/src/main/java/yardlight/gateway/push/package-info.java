/**
 * Sets up the channel {@code push} from the gateway's properties. Start reading at {@code PushConfiguration}.
 *
 * <p>The channel always exists, so that a setup may name it; messages wait until there is a contact for the push services.
 */
package yardlight.gateway.push;
