/**
 * The people's phones: the texts on them, the link in a text, and a browser that opens it and answers. Start with
 * {@link yardlight.demo.phone.Phones}. It knows the people, and of the gateway only what a text or its page says.
 */
package yardlight.demo.phone;
