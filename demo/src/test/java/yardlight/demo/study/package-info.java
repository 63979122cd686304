/**
 * Studies: the made-up lease under the rules as the gateway runs them, driven through time without a gateway. Their
 * results are in docs/lease-study.md.
 */
package yardlight.demo.study;
