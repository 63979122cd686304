package yardlight.escalation.wording;

import static yardlight.escalation.wording.Account.led;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The text that comes at a time that its reader chose:
 * {@code All 6 sites reporting, 0 in alarm. Sat 7:00 AM. Line 1 proven today.} What is wrong is said first:
 * {@code 1 of 6 sites silent: LOMA 4. 1 in alarm: MESA 9 WATER TANK HIGH. Sat 7:00 AM.} It names its time, so that one
 * that was long on its way is not taken for news.
 */
final class AllsWellText {

    private static final int WEEK = 7;

    private final Wellbeing being;
    private final Phrases phrases;
    private final Room room = new Room();

    private AllsWellText(Wellbeing being, Phrases phrases) {
        this.being = being;
        this.phrases = phrases;
    }

    static String text(Wellbeing being, Phrases phrases) {
        return new AllsWellText(being, phrases).text();
    }

    private String text() {
        boolean silence = !being.silent().isEmpty();
        boolean alarm = !being.alarms().isEmpty();
        // Most important first; these always fit. Whether a comma or a full stop stands between them takes the same
        // room.
        String sites = room.take(sites());
        String alarms = room.take(gsm(phrases.inAlarm(being.alarms().size())));
        String time = room.take(". " + time() + ".");
        room.keep(", ".length());

        int kept = room.keep(Gsm7.septets(unprovenCount()));
        String worst = alarm ? worst() : "";
        room.give(kept);
        String unproven = unproven();
        String silent = silence ? names(": ", being.silent(), site -> Names.site(site)) : "";
        String others =
                names(", ", alarm ? being.alarms().subList(1, being.alarms().size()) : List.of(), this::brief);
        String uncovered = being.uncovered().map(this::uncovered).orElse("");
        String proven = proven();
        String rest = rest();

        String where = sites + silent;
        String what = alarms + worst + (worst.isEmpty() ? "" : others);
        String first = silence ? where + ". " + what : alarm ? what + ". " + where : where + ", " + what;
        return first + time + unproven + uncovered + proven + rest;
    }

    private String sites() {
        int silent = being.silent().size();
        return gsm(
                silent == 0 ? phrases.sitesReporting(being.watched()) : phrases.sitesSilent(silent, being.watched()));
    }

    private String time() {
        Wellbeing.Moment moment = being.moment();
        String late = moment.due()
                .map(due -> led(" ", "(" + phrases.late(Hour.ofDay(due, moment.zone(), phrases)) + ")"))
                .orElse("");
        return gsm(Hour.ofDay(moment.now(), moment.zone(), phrases) + late);
    }

    private String worst() {
        Subject subject = being.alarms().get(0);
        return room.take(": " + brief(subject), ": " + Names.site(subject.site()));
    }

    private String brief(Subject subject) {
        var account = new Account(subject, phrases);
        Names names = account.names();
        return names.within(names.assured()).spoken() + led(" ", account.condition());
    }

    private String unproven() {
        List<Way> ways = being.proof().unproven();
        if (ways.isEmpty()) {
            return "";
        }
        String head = " " + gsm(phrases.unproven()) + ": ";
        String all = ways.stream().map(way -> gsm(phrases.way(way))).collect(Collectors.joining(", "));
        String numbers =
                ways.stream().map(way -> Integer.toString(way.number())).collect(Collectors.joining(", "));
        return room.take(
                head + all + ".",
                head
                        + (ways.size() == 1
                                ? gsm(phrases.way(new Way(ways.get(0).number(), "")))
                                : gsm(phrases.lines()) + " " + numbers)
                        + ".",
                unprovenCount());
    }

    /** The least that is said of them. */
    private String unprovenCount() {
        int count = being.proof().unproven().size();
        return count == 0 ? "" : " " + gsm(phrases.unproven()) + ": " + count + " " + gsm(phrases.lines()) + ".";
    }

    private String uncovered(Wellbeing.Uncovered gap) {
        String priorities =
                gap.priorities().stream().map(phrases.gaps()::priority).collect(Collectors.joining(", "));
        String said = phrases.gaps().uncovered(priorities, Names.site(gap.site()), when(gap), gap.more());
        return room.take(" " + gsm(said) + ".", " " + gsm(phrases.gaps().ahead(1 + gap.more())) + ".");
    }

    /** The day of the week says which day is meant for not quite a week. */
    private String when(Wellbeing.Uncovered gap) {
        Wellbeing.Moment moment = being.moment();
        if (!gap.from().isAfter(moment.now())) {
            return phrases.gaps().until(Hour.ofDay(gap.to(), moment.zone(), phrases));
        }
        long days = ChronoUnit.DAYS.between(date(moment.now()), date(gap.from()));
        return days < WEEK
                ? Hour.ofDay(gap.from(), moment.zone(), phrases)
                : phrases.gaps().inDays(days);
    }

    private LocalDate date(Instant at) {
        return LocalDate.ofInstant(at, being.moment().zone());
    }

    private String proven() {
        return being.proof()
                .newest()
                .map(way -> room.take(
                        " " + gsm(phrases.proven(way, being.proof().days())) + ".",
                        " "
                                + gsm(phrases.proven(
                                        new Way(way.number(), ""), being.proof().days())) + "."))
                .orElse("");
    }

    private String rest() {
        String aside = being.aside() == 0 ? "" : " " + gsm(phrases.aside(being.aside())) + ".";
        String unwatched = being.unwatched() == 0 || being.watched() == 0
                ? ""
                : " " + gsm(phrases.unwatched(being.unwatched())) + ".";
        return room.take(aside) + room.take(unwatched);
    }

    /** As many as fit, up to the first one for which there is no room. */
    private <T> String names(String lead, List<T> things, Function<T, String> name) {
        var said = new StringBuilder();
        for (T thing : things) {
            String next = room.take((said.isEmpty() ? lead : ", ") + name.apply(thing));
            if (next.isEmpty()) {
                break;
            }
            said.append(next);
        }
        return said.toString();
    }

    private static String gsm(String words) {
        return Transliteration.gsm(words);
    }
}
