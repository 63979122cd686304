/**
 * Units and what was measured in them. Start reading at {@link yardlight.gateway.measure.Units}. Has no door of its own.
 */
package yardlight.gateway.measure;
