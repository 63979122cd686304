/**
 * The doors for readings: boxes post them, people read them back; and what makes them smaller with age. Start reading at
 * {@code ReadingsController}.
 */
package yardlight.gateway.readings;
