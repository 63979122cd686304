/**
 * Sets up the channels {@code mail} and {@code sms-mail} and the mailbox from the gateway's properties. Start reading at
 * {@code MailConfiguration}.
 *
 * <p>Both channels always exist, so that a setup may name them before there is a server; messages wait until then.
 */
package yardlight.gateway.mail;
