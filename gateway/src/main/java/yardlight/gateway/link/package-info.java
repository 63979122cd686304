/**
 * The links in texts: how a notice gets its address and how an address is known again. Start reading at
 * {@link yardlight.gateway.link.Tokens}. What happens when somebody follows one is in {@code answer}.
 */
package yardlight.gateway.link;
