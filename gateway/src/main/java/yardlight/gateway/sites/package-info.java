/**
 * The pages of sites: all of them, one with its boxes, points and alarms, and the form that sets a point up. Start reading
 * at {@code SitesPage}. What is edited goes through {@link yardlight.gateway.edit.Desk}.
 */
package yardlight.gateway.sites;
