/**
 * The owner's doors that change more than one alarm: the setup and the logins. Start reading at {@code SetupController}.
 * What a setup means is read in {@code setup}; what a change of it does is decided behind the lane.
 */
package yardlight.gateway.owner;
