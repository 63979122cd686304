/**
 * Readings held against what a point should read: too high, too low, too fast, drifted, stuck, missing, or no measurement at
 * all. Start with {@link yardlight.escalation.limit.Rules}, then {@link yardlight.escalation.limit.Gauge}, the memory of one
 * point, and {@link yardlight.escalation.limit.Watching}, which holds one against the other. What is found becomes an alarm
 * elsewhere: nothing here knows of delays, shelves or people.
 */
package yardlight.escalation.limit;
