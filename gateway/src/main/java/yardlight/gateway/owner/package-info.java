/**
 * The owner's door that changes more than one alarm: the setup. Start reading at {@code SetupController}.
 * What a setup means is read in {@code setup}; what a change of it does is decided behind the lane.
 */
package yardlight.gateway.owner;
