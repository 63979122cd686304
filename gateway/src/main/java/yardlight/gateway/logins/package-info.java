/**
 * Who may sign in: the owner's page and API for it, invitations and the page on which the invited one chooses, and everybody's
 * own page. Start reading at {@code LoginChanges}; the doors themselves are in {@code people}.
 */
package yardlight.gateway.logins;
