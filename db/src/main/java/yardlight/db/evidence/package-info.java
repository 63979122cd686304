/**
 * The log as evidence: heads that are signed, proofs, and an export that can be checked far from here. Start reading at
 * {@link yardlight.db.evidence.LogTree}.
 *
 * <p>Knows neither who asks nor who is told of a head.
 */
package yardlight.db.evidence;
