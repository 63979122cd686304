package yardlight.escalation.setup;

/**
 * One way to reach a contact.
 *
 * @param channel name of the channel, such as {@code sms-mail}
 * @param address whatever that channel takes for an address
 */
public record Line(String channel, String address) {}
