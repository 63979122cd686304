/**
 * How each channel stands, what waits in it and who is reached by it. Start reading at {@code PathsPage}.
 */
package yardlight.gateway.paths;
