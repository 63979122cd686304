/**
 * How the gateway is heard: over TLS when a certificate is set, else on this machine only. Start reading at
 * {@code PlainHttp}. Knows nothing of what is said.
 */
package yardlight.gateway.transport;
