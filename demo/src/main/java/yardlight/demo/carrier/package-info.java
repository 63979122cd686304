/**
 * The stand-in carrier: a real SMTP server that takes what the gateway sends and hands it on as letters. Start with
 * {@link yardlight.demo.carrier.Carrier}. It does not know whose address is whose.
 */
package yardlight.demo.carrier;
