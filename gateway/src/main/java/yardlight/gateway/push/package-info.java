/**
 * Sets up the channel {@code push} from the gateway's properties, and has the page on which a phone subscribes. Start reading
 * at {@code PushConfiguration}, and for the page at {@code PhonePage}.
 *
 * <p>The channel always exists, so that a setup may name it; messages wait until there is a contact for the push services.
 */
package yardlight.gateway.push;
