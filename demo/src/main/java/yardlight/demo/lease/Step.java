package yardlight.demo.lease;

import java.util.Random;

/** A short stretch of time and the dice thrown in it. */
record Step(double minutes, Random random) {}
