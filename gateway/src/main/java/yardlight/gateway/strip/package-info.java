/**
 * The curve of a point, as a strip of ruled paper that a page shows without any script, and what all curves share: marks
 * at round figures and round times, gaps where nothing was read, limits, alarms, and the same in words. Start reading at
 * {@link yardlight.gateway.strip.Strips}.
 */
package yardlight.gateway.strip;
