package yardlight.escalation.study;

import java.util.Set;
import yardlight.escalation.heartbeat.Verdict;

/**
 * What a text to the first contact said.
 *
 * @param text number of the text; one that says several things has them all under one number
 * @param at in ms of the playing
 * @param boxes whose silence it is about
 * @param feed which it says is off, {@link World#NONE} when it is about silence
 */
record Told(int text, long at, Verdict verdict, Set<Integer> boxes, int feed) {}
