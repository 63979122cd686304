/**
 * The page on which any points of a site are seen together: drawn by a script that asks for the figures of what is in
 * sight, and without one as strips, sentences and tables. Start reading at {@code CurvesPage}.
 */
package yardlight.gateway.curves;
