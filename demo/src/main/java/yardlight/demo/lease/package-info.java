/**
 * A made-up lease as physics: wells, separator, two tanks, an injection pump with its float switch, the line into the
 * ground, and what can go wrong with each. Pure, stepped and seeded: no clock, no thread, nothing of the gateway.
 * Start reading at {@link yardlight.demo.lease.Lease}. The figures are invented after common practice of the trade,
 * which has no published source.
 */
package yardlight.demo.lease;
