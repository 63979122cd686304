package yardlight.gateway.lines;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardlight.db.alarm.Told;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/** Puts what is known of a contact into words. */
record PersonSheets(Tongue tongue, Clockface clock) {

    PersonSheet of(Contact contact, List<KnownLine> lines, List<Told.Sent> sent) {
        return new PersonSheet(
                contact.id(),
                contact.name(),
                tongue.say(
                        "people.time", clock.read(clock.now()), contact.zone().getId()),
                facts(contact),
                contact.quiet().stream().map(this::quiet).toList(),
                Dial.of(contact.quiet(), clock.now().atZone(contact.zone()).toLocalTime()),
                lines.stream().map(this::way).toList(),
                sent.stream().map(this::told).toList());
    }

    private List<String> facts(Contact contact) {
        var facts = new ArrayList<String>();
        facts.add(tongue.say("people.speaks." + contact.language().name().toLowerCase(Locale.ROOT)));
        facts.add(tongue.say("people.texts", contact.textsPerHour()));
        facts.add(contact.allsWell().map(this::allsWell).orElseGet(() -> tongue.say("people.well.none")));
        return facts;
    }

    private String allsWell(AllsWell schedule) {
        return tongue.say("people.well", days(schedule.days()), time(schedule.at()));
    }

    private String quiet(QuietHours hours) {
        return tongue.say(
                "people.quiet",
                time(hours.from()),
                time(hours.to()),
                days(hours.startingOn()),
                tongue.say("people.lets." + hours.lets().word()));
    }

    private String time(LocalTime time) {
        return clock.read(time);
    }

    private String days(Set<DayOfWeek> days) {
        return days.size() == DayOfWeek.values().length
                ? tongue.say("people.daily")
                : new TreeSet<>(days)
                        .stream()
                                .map(day -> day.getDisplayName(TextStyle.SHORT, tongue.locale()))
                                .collect(Collectors.joining(", "));
    }

    private PersonSheet.Way way(KnownLine known) {
        LineHealth line = known.health();
        return new PersonSheet.Way(
                known.place() + 1,
                tongue.say("people.line", known.place() + 1, line.key().channel()),
                known.address(),
                line.provenAt()
                        .map(at -> tongue.say("people.reached", clock.read(at)))
                        .orElseGet(() -> tongue.say("people.unreached")),
                line.proven(clock.now()),
                facts(line));
    }

    private List<String> facts(LineHealth line) {
        var facts = new ArrayList<String>();
        line.handedOverAt().ifPresent(at -> facts.add(tongue.say("people.taken", clock.read(at))));
        line.deliveredAt().ifPresent(at -> facts.add(tongue.say("people.arrived", clock.read(at))));
        line.answeredAt().ifPresent(at -> facts.add(tongue.say("people.answered", clock.read(at))));
        line.trouble()
                .ifPresent(
                        trouble -> facts.add(tongue.say("people.trouble", clock.read(trouble.at()), trouble.words())));
        line.test()
                .ifPresent(test -> facts.add(tongue.say(
                        test.answered() ? "people.test.answered" : "people.test.open", clock.read(test.at()))));
        return facts;
    }

    private PersonSheet.Told told(Told.Sent sent) {
        String way =
                sent.channel().map(channel -> tongue.say("people.by", channel)).orElse("");
        return new PersonSheet.Told(
                clock.read(sent.notice().queuedAt()),
                switch (sent.notice().state()) {
                    case QUEUED -> tongue.say("people.sent.queued", way);
                    case HELD ->
                        tongue.say(
                                "people.sent.held",
                                sent.notice().heldUntil().map(clock::read).orElse(""));
                    case BUNDLED -> tongue.say("people.sent.bundled");
                    case HANDED_OVER ->
                        tongue.say(
                                "people.sent.handed",
                                way,
                                sent.handedOverAt().map(clock::read).orElse(""));
                    case DELIVERED ->
                        tongue.say(
                                "people.sent.delivered",
                                way,
                                sent.deliveredAt().map(clock::read).orElse(""));
                    case REFUSED -> tongue.say("people.sent.refused");
                    case CANCELLED -> tongue.say("people.sent.cancelled");
                },
                sent.notice().text());
    }
}
