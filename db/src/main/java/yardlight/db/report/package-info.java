/**
 * What reports need of the past: the occurrences of a time, and the texts that people got. Start reading at
 * {@link yardlight.db.report.PastAlarms}.
 */
package yardlight.db.report;
