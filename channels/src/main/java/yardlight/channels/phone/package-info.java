/**
 * Telephone numbers, over whatever a text goes to them. Start with {@link yardlight.channels.phone.PhoneNumbers}.
 *
 * <p>No channel: what those have in common that send to numbers. The only package that knows libphonenumber.
 */
package yardlight.channels.phone;
