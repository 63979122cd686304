/**
 * Whether there is any hour to come in which an alarm is called to nobody: kept worked out for the setup that holds, and
 * worked out for one that is not stored yet. Start reading at {@link yardlight.gateway.coverage.Coverages}.
 *
 * <p>What a gap is stands in {@code escalation.coverage}; here it is only asked for, remembered and put into words.
 */
package yardlight.gateway.coverage;
