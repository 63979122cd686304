/**
 * Sheets to be printed, as PDF: type, tables, page numbers, black on white. Start reading at
 * {@link yardlight.gateway.paper.Paper}.
 *
 * <p>Knows nothing of alarms. Nobody else knows how a PDF is written.
 */
package yardlight.gateway.paper;
