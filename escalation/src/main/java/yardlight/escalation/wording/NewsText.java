package yardlight.escalation.wording;

import static yardlight.escalation.wording.Account.led;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The text that says what became of what its reader was called for:
 * {@code MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min. No reply needed.} and
 * {@code Ben Tully has it since 2:21 AM: MESA 9 WATER TANK HIGH-HIGH}. Of several it gives the count and as many as fit.
 */
final class NewsText {

    /** Septets of a person's name: the one who reads knows them. */
    private static final int NAME = 30;

    private final Phrases phrases;
    private final Room room = new Room();

    private NewsText(Phrases phrases) {
        this.phrases = phrases;
    }

    /** @param answering empty when nothing is left to do */
    static String text(List<Tiding> tidings, Optional<Answering> answering, Phrases phrases) {
        var text = new NewsText(phrases);
        return tidings.size() == 1 ? text.one(tidings.get(0), answering) : text.many(tidings, answering);
    }

    /** The text with one more piece of news after it, if that fits whole. */
    static Optional<String> also(String before, Tiding tiding, boolean first, Phrases phrases) {
        // A full stop right after an address would become a part of it.
        boolean address = before.substring(before.lastIndexOf(' ') + 1).contains("://");
        String lead = first ? (address ? " " : ". ") + gsm(phrases.also()) + ": " : "; ";
        String after = before + lead + new NewsText(phrases).brief(tiding);
        return Gsm7.septets(after) <= Segments.Alphabet.GSM7.alone() ? Optional.of(after) : Optional.empty();
    }

    private String one(Tiding tiding, Optional<Answering> answering) {
        if (tiding.taken().isPresent()) {
            Tiding.Taken taken = tiding.taken().get();
            String who = room.take(gsm(phrases.hasIt(name(taken), time(taken.since(), tiding))) + ": ");
            int kept = room.keep(needs(tiding));
            String over = room.take(led(
                    ", ",
                    gsm(tiding.over()
                            .map(at -> phrases.returned(time(at, tiding)))
                            .orElse(""))));
            room.give(kept);
            return who + what(tiding, room.left()) + over;
        }
        String over = room.take(led(
                " ",
                gsm(tiding.over()
                        .map(at -> phrases.backToNormal(tiding.alarms(), time(at, tiding)))
                        .orElse(""))));
        int kept = room.keep(needs(tiding));
        String reset = led(", ", new Account(tiding.worst(), phrases).wantsReset());
        Optional<Ending> ending = answering.map(how -> Ending.of(how, phrases));
        String end = room.take(ending.map(Ending::code).orElse(reset.isEmpty() ? noReply() : reset));
        String length = room.take(led(", ", gsm(length(tiding))));
        String link = ending.map(one -> room.take(one.link())).orElse("");
        room.give(kept);
        return what(tiding, room.left()) + over + length + end + link;
    }

    private String many(List<Tiding> tidings, Optional<Answering> answering) {
        int over = (int) tidings.stream().filter(one -> one.taken().isEmpty()).count();
        String count = room.take(gsm(phrases.news(over, tidings.size() - over)) + ": ");
        String end = room.take(
                answering.map(how -> Ending.of(how, phrases).code()).orElse(over == tidings.size() ? noReply() : ""));
        var said = new StringBuilder();
        for (Tiding tiding : tidings) {
            String next = room.take((said.isEmpty() ? "" : "; ") + brief(tiding));
            if (next.isEmpty()) {
                break;
            }
            said.append(next);
        }
        return count + said + end;
    }

    private String brief(Tiding tiding) {
        String what = what(tiding, needs(tiding));
        String over =
                tiding.over().map(at -> " " + phrases.normal(time(at, tiding))).orElse("");
        String code = tiding.code().map(one -> ", OK " + one).orElse("");
        return tiding.taken()
                .map(taken -> gsm(phrases.has(name(taken))) + " " + what)
                .orElseGet(() -> what + over + code);
    }

    private String what(Tiding tiding, int septets) {
        var account = new Account(tiding.worst(), phrases);
        if (tiding.alarms() > 1) {
            return Names.site(tiding.worst().site()) + " " + gsm(phrases.alarms(tiding.alarms()));
        }
        String condition = led(" ", account.condition());
        int left = septets - Gsm7.septets(condition);
        return account.names().within(Math.max(left, 3)).spoken() + condition;
    }

    /** Septets that what it is about has a right to. */
    private int needs(Tiding tiding) {
        var account = new Account(tiding.worst(), phrases);
        return account.names().assured() + Gsm7.septets(led(" ", account.condition()));
    }

    private String length(Tiding tiding) {
        return tiding.over()
                .flatMap(end -> tiding.began().filter(end::isAfter).map(began -> Span.of(Duration.between(began, end))))
                .map(length -> phrases.lasted(tiding.worst().alarm().condition(), length))
                .orElse("");
    }

    private String noReply() {
        return ". " + gsm(phrases.noReply());
    }

    private static String name(Tiding.Taken taken) {
        return Shortening.to(NAME, gsm(taken.name()));
    }

    private static String time(Instant at, Tiding tiding) {
        return Hour.of(at, tiding.worst().site().zone());
    }

    private static String gsm(String words) {
        return Transliteration.gsm(words);
    }
}
