/**
 * Measures the gateway from outside and prints each figure beside its limit, from one run on one machine, so that the
 * ratio says something where the figures alone do not. Start with {@link yardlight.demo.bench.Bench}. All traffic stays
 * on the loopback interface and is bounded in time and count.
 */
package yardlight.demo.bench;
