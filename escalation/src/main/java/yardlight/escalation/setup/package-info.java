/**
 * Everything the owner sets up, as one value, and what can be wrong with it.
 *
 * <p>Start with {@link yardlight.escalation.setup.Setup}; {@link yardlight.escalation.setup.SetupCheck} names the
 * mistakes before one is made. How a setup is written down, as YAML or otherwise, is not known here, nor is anything that
 * happens.
 */
package yardlight.escalation.setup;
