/**
 * What comes in from outside by a channel: texts of people, which are answered, and what carriers say later of texts that
 * they took. Start reading at {@code Arrivals}.
 *
 * <p>Knows nothing of what a text means: who does is {@link yardlight.gateway.incoming.Asked}.
 */
package yardlight.gateway.incoming;
