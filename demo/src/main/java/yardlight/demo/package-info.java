/**
 * A made-up operator around the real gateway, which it knows from outside only: HTTP and SMTP. Start with {@link
 * yardlight.demo.DemoRun}; the parts are in {@code stage} (what must stand), {@code night} (what is played), {@code
 * page} (what one sees). None of our other modules may be on its classpath.
 */
package yardlight.demo;
