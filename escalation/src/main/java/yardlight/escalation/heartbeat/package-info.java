/**
 * Signs of life of the boxes, and the deadline after which their silence is an alarm.
 *
 * <p>Start with {@link yardlight.escalation.heartbeat.BoxWatch}; how long a box may be silent is a {@link
 * yardlight.escalation.heartbeat.Patience}, set up or made of its {@link yardlight.escalation.heartbeat.Arrivals}. The words for what a silence means are in {@link
 * yardlight.escalation.heartbeat.Verdict}. Nothing else of ours is known here: the alarm that follows is raised elsewhere.
 */
package yardlight.escalation.heartbeat;
