/**
 * The description of the API for programs, OpenAPI at {@code /v3/api-docs}. Start reading at {@code ApiController}. It is
 * a file, {@code api.json}; {@code DescriptionTest} makes it anew from the doors themselves and fails when it differs.
 */
package yardlight.gateway.describe;
