/**
 * One HTTP exchange, for the channels that need one: bounded in time and size, never redirected and never repeated, and
 * exact about whether the other side can have got anything. Start reading at {@link yardlight.channels.web.Exchanges}.
 *
 * <p>No channel itself, and it knows none: what an answer means for a message is theirs.
 */
package yardlight.channels.web;
