/**
 * What is known of the ways to people: in the API, on a page for each of them, and with a button that tries one. Start
 * reading at {@code ContactPage}. What proves a line is decided by the engine.
 */
package yardlight.gateway.lines;
