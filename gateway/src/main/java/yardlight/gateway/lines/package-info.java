/**
 * The people who can be called: what is known of the ways to them, in the API and on a page for each with a button that
 * tries one, and the forms that make, change and take them away. Start reading at {@code PeoplePage}. What proves a line
 * is decided by the engine, what a contact must be by the reader of the setup.
 */
package yardlight.gateway.lines;
