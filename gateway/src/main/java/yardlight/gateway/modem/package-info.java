/**
 * Sets up the channel {@code modem} from the gateway's properties. Start reading at {@code ModemConfiguration}.
 *
 * <p>There is such a channel only where a port is named: most gateways have no modem, and need not read of one.
 */
package yardlight.gateway.modem;
