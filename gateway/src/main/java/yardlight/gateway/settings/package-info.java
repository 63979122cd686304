/**
 * How a gateway that cannot start with its properties says so. Start reading at
 * {@link yardlight.gateway.settings.SettingsTrouble}.
 *
 * <p>Knows no property: who reads them knows what is wrong with them.
 */
package yardlight.gateway.settings;
