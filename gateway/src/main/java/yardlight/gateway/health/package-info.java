/**
 * What a supervisor and a monitoring program ask: is it alive, is it ready, and what does not go out. Start reading at
 * {@code ChannelsHealth}.
 */
package yardlight.gateway.health;
