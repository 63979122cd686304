package yardlight.escalation.wording;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestState;

final class English implements Phrases {

    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    @Override
    public String condition(String condition) {
        return EnglishConditions.NAMES.getOrDefault(condition, condition.toUpperCase(Locale.ROOT));
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
    public String target(String number) {
        return "target " + number;
    }

    @Override
    public String was(String condition) {
        return "was " + condition;
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
    public String stillFills(String feed) {
        return feed + " still on, tanks fill";
    }

    @Override
    public String toOverflow(String length) {
        return "About " + length + " to overflow";
    }

    @Override
    public String atWorst(String length) {
        return length + " at worst";
    }

    @Override
    public String atWorst() {
        return "at worst";
    }

    @Override
    public Optional<String> meaning(String condition) {
        return Optional.ofNullable(EnglishConditions.MEANINGS.get(condition));
    }

    @Override
    public String stands(Circumstance.Stands stands) {
        return switch (stands) {
            case WITHOUT_POWER -> "It stands: its power is off";
            case AT_A_LEVEL -> "It stands and the level is up: tripped, off or no power";
            case DRY -> "It stands and the level does not rise: hardly anything comes in";
            case FOR_LONG -> "It stands for long: off, tripped or nothing to pump";
        };
    }

    @Override
    public String silentTogether(int sites, boolean link, String name, String time) {
        return togetherOn(sites, link, name) + " since " + time;
    }

    @Override
    public String togetherOn(int sites, boolean link, String name) {
        return sites
                + (sites == 1 ? " site on " : " sites on ")
                + (name.isEmpty() ? "one" : name)
                + (link ? " link" : " feed");
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

    @Override
    public String day(DayOfWeek day) {
        return DAYS.get(day.getValue() - 1);
    }

    @Override
    public String sitesReporting(int sites) {
        return switch (sites) {
            case 0 -> "No site sends heartbeats";
            case 1 -> "The site is reporting";
            default -> "All " + sites + " sites reporting";
        };
    }

    @Override
    public String sitesSilent(int silent, int sites) {
        return sites == 1 ? "The site is silent" : silent + " of " + sites + " sites silent";
    }

    @Override
    public String inAlarm(int alarms) {
        return alarms + " in alarm";
    }

    @Override
    public String aside(int alarms) {
        return alarms + " put aside";
    }

    @Override
    public String unwatched(int sites) {
        return sites == 1 ? "1 site sends no heartbeats" : sites + " sites send no heartbeats";
    }

    @Override
    public String late(String due) {
        return "late, due " + due;
    }

    @Override
    public String unproven() {
        return "Not proven for 30 days";
    }

    @Override
    public String lines() {
        return "lines";
    }

    @Override
    public String way(Way way) {
        return "line " + way.number() + (way.channel().isEmpty() ? "" : " (" + way.channel() + ")");
    }

    @Override
    public String proven(Way way, long days) {
        String when = days < 1 ? "today" : days == 1 ? "yesterday" : days + " days ago";
        return "L" + way(way).substring(1) + " proven " + when;
    }

    @Override
    public GapPhrases gaps() {
        return GapPhrases.ENGLISH;
    }

    @Override
    public String test(Way way) {
        return "Yardlight test, no alarm: this is " + way(way);
    }

    @Override
    public String backToNormal(int alarms, String time) {
        return (alarms == 1 ? "is" : "are") + " back to normal " + time;
    }

    @Override
    public String lasted(String condition, String length) {
        return switch (condition) {
            case "power-off" -> "was off " + length;
            case "silent" -> "was silent " + length;
            default -> "after " + length;
        };
    }

    @Override
    public String noReply() {
        return "No reply needed.";
    }

    @Override
    public String hasIt(String name, String time) {
        return name + " has it since " + time;
    }

    @Override
    public String has(String name) {
        return name + " has";
    }

    @Override
    public String normal(String time) {
        return "normal " + time;
    }

    @Override
    public String alarms(int alarms) {
        return alarms + " alarms";
    }

    @Override
    public String news(int over, int taken) {
        String first = over + " back to normal";
        String second = taken + " taken by others";
        return taken == 0 ? first : over == 0 ? second : first + ", " + second;
    }

    @Override
    public String signedIn(boolean program) {
        return "signed in with a new " + (program ? "program" : "browser") + " from";
    }

    @Override
    public String notKnown(boolean own) {
        return own ? "Not you? Change your password." : "Not known to you? End their sessions.";
    }

    @Override
    public String noAlarm() {
        return "no alarm";
    }

    @Override
    public String more(int others) {
        return "And " + others + " more.";
    }

    @Override
    public String asker(Asker.Kind asker) {
        return asker == Asker.Kind.LAST_CALL ? "the time to overflow" : "the ladder";
    }

    @Override
    public String shutIn(RequestState state, String time, String by) {
        return switch (state) {
            case ASKED, TRYING, UNCERTAIN ->
                "ASKED TO SHUT IN " + time + (by.isEmpty() ? "" : " by " + by)
                        + ". Not done yet: you will hear what the site says.";
            case FETCHED -> "has the request to shut in " + time + ". Not done yet: it has to confirm.";
            case CONFIRMED -> "IS SHUT IN, the site says " + time + ". It is started again at the site only.";
            case REFUSED -> "DOES NOT SHUT IN, the site says " + time + ". Somebody has to go there.";
            case EXPIRED -> "WAS NOT SHUT IN: the request expired " + time + " before the site took it.";
            case UNCONFIRMED -> "SHUT-IN NOT CONFIRMED " + time + ". It may be done or not: somebody has to look.";
            case WITHDRAWN -> "request to shut in taken back " + time + ". If the site had it, it may still be done.";
        };
    }

    @Override
    public String also() {
        return "Also";
    }
}
