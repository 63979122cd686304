package yardlight.gateway.lines;

import yardlight.escalation.proof.LineHealth;

/**
 * A line of a contact with what is known of it.
 *
 * @param place in the contact's list, from 0 on
 * @param address as much of it as whoever asks may see
 */
record KnownLine(int place, String address, LineHealth health) {}
