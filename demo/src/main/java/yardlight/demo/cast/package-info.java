/**
 * The made-up operator: its people and boxes, read out of the setup document that the gateway gets, so that each name
 * and number stands in one place. Start with {@link yardlight.demo.cast.Cast}. It knows nothing of the gateway.
 */
package yardlight.demo.cast;
