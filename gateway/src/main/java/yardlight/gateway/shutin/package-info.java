/**
 * Asking a site to shut in: the page on which the owner turns it on, caution by caution, the page on which somebody asks, and
 * what carries a request to a relay. Start reading at {@code ShutInPage}; the rules are {@link
 * yardlight.escalation.shutin}. A box fetches its request at the door for boxes.
 */
package yardlight.gateway.shutin;
