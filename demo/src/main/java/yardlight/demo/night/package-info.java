/**
 * One night, written down beforehand and played by itself: what happens when, who answers how, what must have come of
 * it. Start with {@link yardlight.demo.night.NightScript}, then {@link yardlight.demo.night.Night}. It has no rules of
 * its own: whom to call and when is the gateway's business.
 */
package yardlight.demo.night;
