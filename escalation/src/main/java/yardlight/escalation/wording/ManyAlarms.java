package yardlight.escalation.wording;

import static yardlight.escalation.wording.Account.led;

import java.util.List;

/**
 * The text about several alarms: how many, where, and as many of the worst as fit, whole ones only.
 * {@code MESA 9: 58 alarms, worst WATER TANK HIGH-HIGH 2:13 AM, then SEPARATOR HIGH 2:14 AM. Reply OK 47} for one site,
 * {@code 12 alarms at 3 sites. MESA 9 WATER TANK HIGH-HIGH 2:13 AM; LOMA 4 PUMP OFF 2:15 AM. Reply ALL} for several.
 */
final class ManyAlarms {

    private final List<Subject> subjects;
    private final Phrases phrases;
    private final int sites;
    private final Room room = new Room();

    private ManyAlarms(List<Subject> subjects, Phrases phrases) {
        this.subjects = subjects;
        this.phrases = phrases;
        this.sites = (int)
                subjects.stream().map(subject -> subject.site().id()).distinct().count();
    }

    static String text(List<Subject> subjects, Answering answering, Phrases phrases) {
        return new ManyAlarms(subjects, phrases).text(Ending.of(answering, phrases));
    }

    private String text(Ending ending) {
        var worst = new Account(subjects.get(0), phrases);
        Names names = worst.names();

        String code = room.take(ending.code());
        String count = room.take(count());
        String what = room.take(what(worst));
        int kept = room.keep(names.assured());
        String returned = room.take(led(" ", worst.returned()));
        String link = room.take(ending.link());
        String others = others();

        room.give(kept);
        Names shown = names.within(room.left());
        String where = sites == 1 ? shown.site() + count + " " + shown.point() : count + shown.spoken();
        return Transliteration.gsm(where + what + returned + others + code) + link;
    }

    /** How many: for one site between its name and the point, for several in front of both. */
    private String count() {
        int alarms = subjects.size();
        return sites == 1
                ? ": " + Transliteration.gsm(phrases.alarmsHere(alarms))
                : Transliteration.gsm(phrases.alarmsAt(alarms, sites)) + ". ";
    }

    private static String what(Account account) {
        return led(" ", account.condition()) + led(" ", account.time());
    }

    /** The next worst, up to the first one for which there is no room: leaving out one in between would mislead. */
    private String others() {
        var said = new StringBuilder();
        for (Subject subject : subjects.subList(1, subjects.size())) {
            String next = room.take(lead(said.isEmpty()) + brief(new Account(subject, phrases)));
            if (next.isEmpty()) {
                break;
            }
            said.append(next);
        }
        return said.toString();
    }

    private String lead(boolean first) {
        if (sites > 1) {
            return "; ";
        }
        return first ? ", " + Transliteration.gsm(phrases.then()) + " " : ", ";
    }

    private String brief(Account account) {
        Names names = account.names().within(account.names().assured());
        String who = sites == 1 ? names.point() : names.spoken();
        return who + what(account) + led(" ", account.returned());
    }
}
