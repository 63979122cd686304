/**
 * One site's coverage for people and for programs: who would hear, by which lines, who next, and every gap with its reason.
 * Start reading at {@code CoveragePage}. What is shown is worked out in {@code coverage}.
 */
package yardlight.gateway.coversheet;
