/**
 * What one sees in the browser: phones, sites with their switches, the clock. Start with {@link
 * yardlight.demo.page.Shown}, which is what the page asks for every second; the page itself is in {@code
 * resources/static}. It shows and switches, and decides nothing.
 */
package yardlight.demo.page;
