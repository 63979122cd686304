/**
 * The description of the API for programs, OpenAPI at {@code /v3/api-docs}. Start reading at {@code Description}. The
 * addresses and answers are found by themselves; what bodies are read stands here, because bodies are read by hand.
 */
package yardlight.gateway.describe;
