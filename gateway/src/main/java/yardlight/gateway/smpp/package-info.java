/**
 * Sets up the channel {@code smpp} from the gateway's properties. Start reading at {@code SmppConfiguration}.
 *
 * <p>The channel always exists, so that a setup may name it before there is a message centre; messages wait until then.
 */
package yardlight.gateway.smpp;
