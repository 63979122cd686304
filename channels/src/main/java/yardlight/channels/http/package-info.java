/**
 * Any provider of texts, calls or chats that takes an HTTP request, by a template. Start with
 * {@link yardlight.channels.http.HttpChannel}; what goes out is made in {@code Template}, and what an answer means is
 * decided in {@code Verdict}.
 *
 * <p>Knows no provider. A template is checked when it is read, so that whatever a message says, no request can come out
 * that is built differently from the one that was meant.
 */
package yardlight.channels.http;
