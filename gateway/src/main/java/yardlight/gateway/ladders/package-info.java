/**
 * The page on which a ladder is built, with its rehearsal beside it. Start reading at {@code LadderPage}.
 *
 * <p>What a ladder must be stands in {@link yardlight.gateway.setup.SetupReader}, whom it calls when in the engine: here a form
 * is made a piece of the setup, and what the engine says of it is written down.
 */
package yardlight.gateway.ladders;
