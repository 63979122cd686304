package yardlight.db.point;

/** A point that had an alarm. */
public record SeenPoint(String site, String point) {}
