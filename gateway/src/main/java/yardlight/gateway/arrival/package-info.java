/**
 * How the body of a request comes in: without a thread that waits for it, so that slow senders keep nobody else waiting,
 * and never more of all bodies at once than the heap bears. Start reading at {@code ArrivalFilter}.
 *
 * <p>Stands before every other filter and knows nothing of what the bodies say.
 */
package yardlight.gateway.arrival;
