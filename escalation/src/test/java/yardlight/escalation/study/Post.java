package yardlight.escalation.study;

import yardlight.escalation.heartbeat.Heartbeat;

/** A heartbeat that arrived, and when. */
record Post(long arrived, int box, Heartbeat said) {}
