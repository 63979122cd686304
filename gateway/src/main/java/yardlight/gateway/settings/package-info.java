/**
 * How a gateway that cannot start with its properties says so, and where secrets may stand. Start reading at
 * {@link yardlight.gateway.settings.SettingsTrouble}.
 *
 * <p>Knows no property: who reads them knows what is wrong with them.
 */
package yardlight.gateway.settings;
