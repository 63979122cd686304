/**
 * Texts through a GSM or LTE modem on a serial port, their receipts, and the texts that people write back; no provider and
 * no internet. Start with {@link yardlight.channels.modem.ModemChannel}; who owns the port is {@code Keeper}, how one talks
 * over it {@code Dialogue}, what an error code means {@code Trouble}, what comes in goes through {@code Storage}.
 *
 * <p>Clauses are those of 3GPP TS 27.005 (texts by AT commands) and TS 27.007 (the other commands). The only package that
 * knows jSerialComm. It knows no other channel.
 */
package yardlight.channels.modem;
