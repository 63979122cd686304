/**
 * What short messages are made of, over whatever they go: septets and how they are packed, the header of a text in several
 * parts, and how such a text is put together again. Start with {@link yardlight.channels.gsm.Segment}.
 *
 * <p>Pure. The alphabet itself and where a text divides are the wording's, which counts the same segments. This is the one
 * package that channels share; it knows none of them.
 */
package yardlight.channels.gsm;
