/**
 * What all pages share: how a time reads and what things are called. Start reading at
 * {@link yardlight.gateway.page.Names}.
 */
package yardlight.gateway.page;
