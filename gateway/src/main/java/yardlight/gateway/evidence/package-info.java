/**
 * Gives out what proves the log: its signed head, proofs for single lines and between heads, the export that can be checked
 * far from here; and mails the head every day to whom the owner chose. Start reading at
 * {@link yardlight.gateway.evidence.EvidenceController}.
 *
 * <p>Knows nothing of what the lines say.
 */
package yardlight.gateway.evidence;
