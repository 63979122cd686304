package yardlight.gateway.answer;

import java.util.Collection;
import java.util.List;

final class EnglishSentences implements Sentences {

    @Override
    public String stranger() {
        return "This number is not known here; nothing was done.";
    }

    @Override
    public String notUnderstood() {
        return "Not understood, nothing was done. Send OK and the number in the text, such as OK 47, or HELP.";
    }

    @Override
    public String notProven() {
        return "Nothing was done. Answer the message itself, or send OK and the number in it, such as OK 47.";
    }

    @Override
    public String help() {
        return "OK 47: you have call 47. ALL: you have everything. HOLD 47 2H: put it away for 2 hours."
                + " STATUS: what is wrong. WHO: who is called. SWAP FRI: ask others.";
    }

    @Override
    public String nothingWaits() {
        return "Thank you. Nothing waits for an answer; there is nothing to do.";
    }

    @Override
    public String noSuchNumber(Collection<Integer> codes) {
        return "Nothing with the number " + Lists.plain(codes) + " waits for an answer.";
    }

    @Override
    public String severalWait(Collection<Integer> codes) {
        return "Several things wait: send OK and one of " + Lists.plain(codes) + ", or ALL.";
    }

    @Override
    public String youHaveIt(String name, List<String> alarms) {
        return "You have it, " + name + ": " + Lists.plain(alarms) + ".";
    }

    @Override
    public String hasIt(String name, String since) {
        return name + " has it since " + since + ".";
    }

    @Override
    public String forHowLong(int code) {
        return "For how long? Send it with a time, such as HOLD " + code + " 2H.";
    }

    @Override
    public String putAway(List<String> alarms, String until) {
        return "Put away until " + until + ": " + Lists.plain(alarms) + ".";
    }

    @Override
    public String refused(String reason) {
        return "Nothing was done: " + reason + ".";
    }

    @Override
    public String status(List<String> waiting, List<String> taken) {
        if (waiting.isEmpty() && taken.isEmpty()) {
            return "All quiet: nothing is in alarm.";
        }
        return waiting.size() + " wait for an answer, " + taken.size() + " are taken: "
                + Lists.plain(Lists.both(waiting, taken)) + ".";
    }

    @Override
    public String calledFirst(List<String> names) {
        return names.isEmpty() ? "Nobody would be called first now." : "Called first now: " + Lists.plain(names) + ".";
    }

    @Override
    public String makeSureToShutIn(String site, int code) {
        return "To ask " + site + " to SHUT IN send SHUT " + code + " from here within 5 min. Nothing is done yet.";
    }

    @Override
    public String shutInAsked(String site, boolean joined) {
        return site + (joined ? " had been asked to shut in already." : " is asked to shut in.")
                + " Not done yet: you will hear what the site says.";
    }

    @Override
    public String wrongCode() {
        return "Nothing was done: that is not the code, or it came too late. Begin anew with SHUT and the call's"
                + " number.";
    }

    @Override
    public String works(Collection<String> lines) {
        return "Thank you. The test got to you by line " + Lists.plain(lines) + ".";
    }

    @Override
    public String stopped(boolean others) {
        return "Nothing more comes here. "
                + (others ? "Your other lines are still used." : "You are called by no other line.")
                + " To be called here again send START.";
    }

    @Override
    public String started(int waiting) {
        return "You are called here again."
                + (waiting == 0 ? "" : " Waiting for an answer: " + waiting + ". Send STATUS.");
    }

    @Override
    public String notStopped() {
        return "You are called here. To hear nothing more here send STOP.";
    }
}
