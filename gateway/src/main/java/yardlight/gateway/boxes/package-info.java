/**
 * The doors for field boxes: events, heartbeats, their keys and their allowance. Start reading at
 * {@code EventsController}. What an event does is decided behind the {@link yardlight.gateway.lane.Lane}; here it is
 * only read, checked field by field and answered.
 */
package yardlight.gateway.boxes;
