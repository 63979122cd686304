/**
 * Texts over SMPP 3.4 to a message centre or a provider, their receipts, and the texts that people write back. Start with
 * {@link yardlight.channels.smpp.SmppChannel}; what a status means is decided in {@code Status}, how a session is kept in
 * {@code Link}, what comes in goes through {@code Arrivals}.
 *
 * <p>Numbers of sections are those of the SMPP Protocol Specification v3.4, issue 1.2 of 12 October 1999. The only package
 * that knows jSMPP, and only to write and read its units of data. It knows no other channel.
 */
package yardlight.channels.smpp;
