/**
 * Forms that are tables of fields: what is in the setup by a name is in the form by the same. Start reading at
 * {@link yardlight.gateway.fields.Layout}. Knows no feature, and has no door of its own.
 */
package yardlight.gateway.fields;
