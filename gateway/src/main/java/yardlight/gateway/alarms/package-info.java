/**
 * Alarms as people see them over the API, and what people do to them. Start reading at {@code ActionsController}.
 * Whether an action is allowed is decided behind the {@link yardlight.gateway.lane.Lane}; what it refuses is shown with
 * its reason.
 */
package yardlight.gateway.alarms;
