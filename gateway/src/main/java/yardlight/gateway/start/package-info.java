/**
 * The first start: leads the owner of an empty gateway, step by step, to the first text on their phone. Start reading at
 * {@code StartPage}.
 *
 * <p>Each step is stored when it is done, so that it can be left at any time; which one is next is read from what is set up.
 */
package yardlight.gateway.start;
