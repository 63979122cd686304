/**
 * The setup document: YAML or JSON in, the engine's values out, every mistake named. Start reading at
 * {@link yardlight.gateway.setup.SetupReader}. Knows nothing of requests and of what a setup is used for.
 */
package yardlight.gateway.setup;
