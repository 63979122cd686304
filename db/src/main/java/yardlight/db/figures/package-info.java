/**
 * Numbers for the meters and for readiness. Start reading at {@link yardlight.db.figures.Figures}.
 */
package yardlight.db.figures;
