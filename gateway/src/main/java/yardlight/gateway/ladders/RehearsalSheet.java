package yardlight.gateway.ladders;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.context.NoSuchMessageException;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.gateway.page.Hours;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * A rehearsal as it is read.
 *
 * @param trouble why there is none; empty when there is one
 * @param first who hears it first, or that nobody does
 * @param text what the first text says; empty when there is none
 * @param cut whether there is more of it
 */
record RehearsalSheet(
        List<String> trouble,
        String title,
        String first,
        String text,
        List<Row> rows,
        boolean cut,
        Optional<WeekSheet> week) {

    private static final String TOLD = "told";

    /** One thing that happens. */
    record Row(String time, String words, String what) {}

    static RehearsalSheet of(Practice.Practised practised, Mistakes mistakes, Tongue tongue) {
        return practised
                .played()
                .map(played -> of(played, practised.ask(), tongue))
                .orElseGet(() -> new RehearsalSheet(
                        mistakes.all(), "", tongue.say("ladders.notyet"), "", List.of(), false, Optional.empty()));
    }

    private static RehearsalSheet of(Practice.Played played, Ask ask, Tongue tongue) {
        var names = new Names(played.setup());
        String site = played.question().key().site();
        String point = played.question().key().point();
        var hours = new Hours(names.zone(site), tongue.locale());
        List<Row> rows = played.lines().stream()
                .map(line -> new Row(time(line.at(), played, hours), words(line, names, tongue), line.what()))
                .toList();
        Optional<Rehearsal.Line> told = told(played);
        return new RehearsalSheet(
                List.of(),
                tongue.say(
                        "ladders.asked",
                        hours.date(played.question().at()),
                        names.site(site) + " "
                                + played.setup().point(site, point).name() + " " + ask.condition()),
                first(played, told, names, hours, tongue),
                told.map(Rehearsal.Line::words).orElse(""),
                rows,
                played.cut(),
                Optional.of(WeekSheet.of(played, hours, tongue)));
    }

    static Optional<Rehearsal.Line> told(Practice.Played played) {
        return played.lines().stream().filter(line -> line.what().equals(TOLD)).findFirst();
    }

    /** With its day where that is not the one of the alarm. */
    static String time(Instant at, Practice.Played played, Hours hours) {
        return hours.dayOf(at).equals(hours.dayOf(played.question().at())) ? hours.clock(at) : hours.day(at);
    }

    private static String first(
            Practice.Played played, Optional<Rehearsal.Line> told, Names names, Hours hours, Tongue tongue) {
        return told.map(line -> tongue.say(
                        "ladders.first", names.contact(line.contact().orElse("")), time(line.at(), played, hours)))
                .orElseGet(() -> tongue.say("ladders.nobody"));
    }

    private static String words(Rehearsal.Line line, Names names, Tongue tongue) {
        var values = new ArrayList<Object>();
        line.contact().map(names::contact).ifPresent(values::add);
        line.channel().map(channel -> channel(channel, tongue)).ifPresent(values::add);
        if (values.isEmpty()) {
            values.add(line.words());
        }
        return tongue.say("ladders.line." + line.what(), values.toArray());
    }

    static String channel(String channel, Tongue tongue) {
        try {
            return tongue.say("ladders.channel." + channel);
        } catch (NoSuchMessageException unnamed) {
            return tongue.say("ladders.channel.other", channel);
        }
    }
}
