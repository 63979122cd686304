/**
 * A person's turns as a private calendar that other programs fetch. Start reading at {@code FeedController}; what stands in it
 * is made by {@code TurnCalendar}. Whoever has the address has the calendar: it is as good as a key, shown once and kept as a
 * hash.
 */
package yardlight.gateway.feed;
