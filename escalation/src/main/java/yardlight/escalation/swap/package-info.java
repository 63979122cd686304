/**
 * A turn that somebody asks the others of their roster to take: what is asked, and what became of it. Start reading at
 * {@link yardlight.escalation.swap.Offer}; its whole life is the table in {@code OfferTransitions}. It must not know who may
 * be asked, nor how anybody is told.
 */
package yardlight.escalation.swap;
