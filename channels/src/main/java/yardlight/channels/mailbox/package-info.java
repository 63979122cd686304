/**
 * A mailbox that is read over IMAP with Jakarta Mail: what people answer to mails and texts by mail, and what mail servers
 * report of them. Start with {@link yardlight.channels.mailbox.Mailbox}; what a mail means is decided in {@code MailReader},
 * and whether it is believed in {@code Handing}.
 *
 * <p>The way back of {@code channels.mail}, from which it has the settings of a server and the names of our mails. It knows
 * no other channel.
 */
package yardlight.channels.mailbox;
