/**
 * The rules of Yardlight as a pure function: old state, stimulus and time in; new state and what to record out.
 *
 * <p>There is no {@code requires} here and there must never be one: no logger, no clock, no library.
 */
module yardlight.escalation {
    exports yardlight.escalation;
    exports yardlight.escalation.alarm;
    exports yardlight.escalation.coverage;
    exports yardlight.escalation.heartbeat;
    exports yardlight.escalation.ladder;
    exports yardlight.escalation.limit;
    exports yardlight.escalation.notice;
    exports yardlight.escalation.performance;
    exports yardlight.escalation.proof;
    exports yardlight.escalation.quiet;
    exports yardlight.escalation.reading;
    exports yardlight.escalation.rehearsal;
    exports yardlight.escalation.reply;
    exports yardlight.escalation.roster;
    exports yardlight.escalation.sentence;
    exports yardlight.escalation.runtime;
    exports yardlight.escalation.setup;
    exports yardlight.escalation.tank;
    exports yardlight.escalation.trend;
    exports yardlight.escalation.shutin;
    exports yardlight.escalation.swap;
    exports yardlight.escalation.wording;
}
