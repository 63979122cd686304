/**
 * What a caller is told when something is wrong: problem details (RFC 9457) for programs, a plain page for people.
 * Start reading at {@link yardlight.gateway.problem.Problem}. Controllers, filters and the container all answer through
 * {@code ProblemWriter}, so that no path out of here shows a class name or a stack trace. Knows nothing of alarms.
 */
package yardlight.gateway.problem;
