/**
 * Signs heads of the log, for whatever leaves the house. Start reading at {@link yardlight.gateway.seal.SigningKey}.
 */
package yardlight.gateway.seal;
