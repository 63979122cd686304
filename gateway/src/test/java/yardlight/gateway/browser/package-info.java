/**
 * The pages in a real browser. Start reading at {@link yardlight.gateway.browser.Visit}.
 */
package yardlight.gateway.browser;
