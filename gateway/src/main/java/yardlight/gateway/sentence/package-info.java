/**
 * What the rules and the doors say to people, in the language of whoever looks. Start reading at
 * {@link yardlight.gateway.sentence.Sentences}. Knows nothing of where it is shown.
 */
package yardlight.gateway.sentence;
