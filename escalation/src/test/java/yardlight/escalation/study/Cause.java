package yardlight.escalation.study;

/** What went wrong in the world. */
enum Cause {
    /** One feed is off; a hub that hangs on it without a battery goes with it. */
    UTILITY("utility, one feed"),
    /** Several feeds and links within minutes, each for a time of its own. */
    STORM("storm"),
    LINK("tower or hub"),
    RADIO("one box's radio"),
    CRASH("one box crashed");

    final String words;

    Cause(String words) {
        this.words = words;
    }

    /** Whether one person with one errand ends it. */
    boolean one() {
        return this != STORM;
    }
}
