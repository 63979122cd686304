/**
 * The real gateway as a child process, and the doors of its public API that the demo goes through. Start with {@link
 * yardlight.demo.gateway.GatewayProcess} and {@link yardlight.demo.gateway.BoxDoor}. It knows nothing of the made-up
 * operator, and nothing of the gateway that is not in the outside contract.
 */
package yardlight.demo.gateway;
