package yardlight.db.alarm;

/** A point that had an alarm. */
public record SeenPoint(String site, String point) {}
