/**
 * Everything that must stand before the night can begin: the carrier, the gateway with its setup, the boxes with their
 * keys, the clock. Start with {@link yardlight.demo.stage.Stage}. It does not know what will be played on it.
 */
package yardlight.demo.stage;
