package yardlight.gateway.setup;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Away;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.gateway.document.Fields;

/** Reads contacts: their lines, their quiet hours, and when they are told that all is well. */
final class PeopleReader {

    private static final int USUAL_TEXTS_PER_HOUR = 20;
    private static final int LONGEST_WORDS = 80;
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    private final LineReader lines;
    private final Zones zones;

    PeopleReader(LineReader lines, Zones zones) {
        this.lines = lines;
        this.zones = zones;
    }

    Contact contact(Fields fields) {
        String id = Ids.of(fields);
        ZoneId zone = zones.orShared(fields);
        var contact = new Contact(
                id,
                Ids.name(fields, id),
                zone,
                fields.as("language", "must be en or es", Language::of).orElse(Language.EN),
                fields.objects("lines").stream().map(lines::read).toList(),
                quiet(fields, zone),
                fields.whole("textsPerHour", 1, 1_000).orElse(USUAL_TEXTS_PER_HOUR),
                fields.object("allsWell").flatMap(one -> allsWell(one, zone)),
                away(fields));
        fields.nothingElse();
        return contact;
    }

    private static List<Away> away(Fields fields) {
        var away = new ArrayList<Away>();
        for (Fields one : fields.objects("away")) {
            Optional<LocalDateTime> from = local(one, "from");
            Optional<LocalDateTime> to = local(one, "to");
            String words = one.text("words", LONGEST_WORDS).orElse("");
            boolean imported = one.flag("imported").orElse(false);
            one.nothingElse();
            if (from.isPresent() && to.isPresent() && !from.get().isBefore(to.get())) {
                one.fault("to", "must be after from");
            } else {
                from.flatMap(start -> to.map(end -> new Away(start, end, words, imported)))
                        .ifPresent(away::add);
            }
        }
        return away;
    }

    private static Optional<LocalDateTime> local(Fields fields, String name) {
        return fields.needs(name).as(name, CallingReader.TIME_RULE, text -> Optional.of(LocalDateTime.parse(text)));
    }

    private static Optional<AllsWell> allsWell(Fields fields, ZoneId zone) {
        Optional<LocalTime> at = time(fields, "at");
        Set<DayOfWeek> days = days(fields);
        fields.nothingElse();
        return at.filter(any -> !days.isEmpty()).map(time -> new AllsWell(time, zone, days));
    }

    private static List<QuietHours> quiet(Fields fields, ZoneId zone) {
        var quiet = new ArrayList<QuietHours>();
        for (Fields hours : fields.objects("quiet")) {
            hours(hours, zone).ifPresent(quiet::add);
        }
        return quiet;
    }

    private static Optional<QuietHours> hours(Fields fields, ZoneId zone) {
        Optional<LocalTime> from = time(fields, "from");
        Optional<LocalTime> to = time(fields, "to");
        Priority lets =
                fields.as("lets", PlaceReader.PRIORITY_RULE, Priority::of).orElse(Priority.HIGH);
        Set<DayOfWeek> days = days(fields);
        fields.nothingElse();
        if (from.isPresent() && from.equals(to)) {
            fields.fault("to", "must not be the same as from");
            return Optional.empty();
        }
        if (days.isEmpty()) {
            return Optional.empty();
        }
        return from.flatMap(start -> to.map(end -> new QuietHours(start, end, zone, lets, days)));
    }

    private static Optional<LocalTime> time(Fields fields, String name) {
        return fields.needs(name)
                .as(name, "must be a time such as \"21:00\"", text -> Optional.of(LocalTime.parse(text)));
    }

    private static Set<DayOfWeek> days(Fields fields) {
        if (!fields.has("days")) {
            return EnumSet.allOf(DayOfWeek.class);
        }
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String word : fields.texts("days")) {
            int place = DAYS.indexOf(word.toLowerCase(Locale.ROOT));
            if (place < 0) {
                fields.fault("days", "must be of " + String.join(", ", DAYS) + ": " + word);
            } else {
                days.add(DayOfWeek.of(place + 1));
            }
        }
        if (days.isEmpty()) {
            fields.fault("days", "must name at least one day");
        }
        return days;
    }
}
