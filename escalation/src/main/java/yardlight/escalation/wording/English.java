package yardlight.escalation.wording;

import java.util.Locale;
import java.util.Map;

final class English implements Phrases {

    private static final Map<String, String> CONDITIONS =
            Map.of("power-off", "POWER OFF", "comms-loss", "COMMS LOST", "said-stop", "SAID STOP");

    @Override
    public String condition(String condition) {
        return CONDITIONS.getOrDefault(condition, condition.toUpperCase(Locale.ROOT));
    }

    @Override
    public String box() {
        return "BOX";
    }

    @Override
    public String limit(String number) {
        return "limit " + number;
    }

    @Override
    public String returned(String time) {
        return time.isEmpty() ? "returned" : "returned " + time;
    }

    @Override
    public String wantsReset() {
        return "needs reset";
    }

    @Override
    public String times(int count) {
        return count + " times";
    }

    @Override
    public String reply(int code) {
        return "Reply OK " + code;
    }

    @Override
    public String replyAll() {
        return "Reply ALL";
    }

    @Override
    public String or() {
        return "or";
    }

    @Override
    public String alarmsHere(int alarms) {
        return alarms + " alarms, worst";
    }

    @Override
    public String alarmsAt(int alarms, int sites) {
        return alarms + " alarms at " + sites + " sites";
    }

    @Override
    public String then() {
        return "then";
    }
}
