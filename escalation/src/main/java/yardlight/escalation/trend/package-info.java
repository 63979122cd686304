/**
 * Where a measured value is going: a robust line through the right stretch of it, and when that line reaches a height.
 * Start with {@link yardlight.escalation.trend.Trend}, then {@link yardlight.escalation.trend.Reach}; how well they do is
 * in docs/tank-study.md.
 *
 * <p>Knows neither tanks nor alarms, only numbers over time.
 */
package yardlight.escalation.trend;
