/**
 * E-mail, and texts by way of a carrier's e-mail gateway, over SMTP with Jakarta Mail. Start with
 * {@link yardlight.channels.mail.SmtpChannel}; what a server's reply means is decided in {@code Verdict}, and how a
 * message looks in {@code Form}.
 *
 * <p>With {@code channels.mailbox} the only package that knows Jakarta Mail. It knows no other channel.
 */
package yardlight.channels.mail;
