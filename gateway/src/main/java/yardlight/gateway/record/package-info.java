/**
 * The log, to be read and to be taken along: a page for people, JSON for programs, CSV for spreadsheets. Start reading at
 * {@code LogController}. Lines are written elsewhere, together with what they tell of.
 */
package yardlight.gateway.record;
