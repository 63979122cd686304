/**
 * Asking a site to shut in: what a request goes through, and what has to be true for one to be made at all. It asks; it is
 * no safety system, and there is nothing here that starts anything.
 *
 * <p>Start with {@link yardlight.escalation.shutin.RequestTransitions}, the whole life of a request as a table. Nothing of
 * people, ladders or texts is known here.
 */
package yardlight.escalation.shutin;
