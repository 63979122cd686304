/**
 * Points that had alarms, whether or not anybody has set them up. Start reading at {@link yardlight.db.point.Points}.
 */
package yardlight.db.point;
