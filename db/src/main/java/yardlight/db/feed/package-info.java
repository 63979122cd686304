/** Which private calendars there are. Start reading at {@link yardlight.db.feed.Feeds}. It knows no token, only hashes. */
package yardlight.db.feed;
