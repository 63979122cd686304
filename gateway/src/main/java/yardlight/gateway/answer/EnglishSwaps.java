package yardlight.gateway.answer;

import java.util.List;

final class EnglishSwaps implements SwapSentences {

    @Override
    public String whichDay() {
        return "Which day? Send SWAP and the day, such as SWAP FRI, SWAP FRI NIGHT or SWAP NOV 27.";
    }

    @Override
    public String asked(List<String> names, String span, String until, int code) {
        return "Asked for " + span + ". NO " + code
                + " takes it back. It is yours until somebody says yes. Asked until " + until + ": "
                + Lists.plain(names) + ".";
    }

    @Override
    public String askedAlready(List<String> names, int code) {
        return "That is asked already, NO " + code + " takes it back. Asked: " + Lists.plain(names) + ".";
    }

    @Override
    public String took(String from, String span) {
        return "Thank you. You take over from " + from + " " + span + ". The roster has it, and " + from + " is told.";
    }

    @Override
    public String declined(String from, boolean others) {
        return "Noted: you do not take it. "
                + (others ? "Others are asked too." : "Nobody else is left; " + from + " is told.");
    }

    @Override
    public String takenBack(String span) {
        return "Taken back: nobody is asked any more, and you have " + span + ".";
    }

    @Override
    public String withNumber(int code) {
        return "Do you mean the turn that you were asked to take? Then send YES " + code + ", or NO " + code + ".";
    }
}
