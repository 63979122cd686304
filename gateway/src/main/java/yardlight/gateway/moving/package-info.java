/**
 * A start that writes all that the gateway keeps into one file, and one that begins with such a file. Start reading at
 * {@code MovingAtStart}, which runs when the database is there and before anybody uses it.
 */
package yardlight.gateway.moving;
