/**
 * The gateway: doors for boxes and people on one side, the lane, the dispatcher and the clock on the other. Each package
 * is a feature; start reading at {@code boxes} for what comes in and at {@code lane} for what becomes of it. The rules
 * are in {@code escalation} and not here.
 */
package yardlight.gateway;
