package yardlight.db.outbox;

/** What is claimed: a notice that goes on to another line while the one before still has it may be claimed for that. */
record Claim(String notice, int line) {

    static Claim of(Outgoing outgoing) {
        return new Claim(outgoing.id(), outgoing.notice().line());
    }
}
