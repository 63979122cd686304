/**
 * Four made-up places with their boxes, which speak the gateway's public API and nothing else. Start with {@link
 * yardlight.demo.boxes.Places}. What the gateway makes of their posts is not known here.
 */
package yardlight.demo.boxes;
