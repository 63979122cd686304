package yardlight.escalation.study;

/** A span of time in ms, start inclusive, end exclusive. */
record Span(long from, long to) {

    /** The span of something that is never so. */
    static final Span NEVER = new Span(0, 0);

    boolean covers(long at) {
        return from <= at && at < to;
    }

    boolean ever() {
        return from < to;
    }

    boolean meets(Span other) {
        return from < other.to && other.from < to;
    }

    long length() {
        return to - from;
    }
}
