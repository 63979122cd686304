package yardlight.gateway.setup;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.gateway.document.Fields;

/** Reads rosters and ladders. What is wrong gets a stand-in, so that the places of all others stay right. */
final class CallingReader {

    static final String TIME_RULE = "must be a local time such as 2026-11-23T07:00";
    private static final LocalDateTime SOME_TIME = LocalDateTime.of(2026, 1, 1, 0, 0);
    private static final Duration USUAL_WAIT = Duration.ofMinutes(5);
    private static final Duration LONGEST_WAIT = Duration.ofDays(1);
    private static final Duration LONGEST_TOUR = Duration.ofDays(366);

    private final Zones zones;

    CallingReader(Zones zones) {
        this.zones = zones;
    }

    Roster roster(Fields fields) {
        String id = Ids.of(fields);
        Optional<Duration> tour = fields.needs("tour").duration("tour", Duration.ofHours(1), LONGEST_TOUR);
        var roster = new Roster(
                id,
                zones.orShared(fields),
                time(fields, "start").orElse(SOME_TIME),
                tour.orElse(Duration.ofDays(7)),
                atLeastOne(fields, "order"),
                reliefs(fields));
        fields.nothingElse();
        return roster;
    }

    private static List<Relief> reliefs(Fields fields) {
        var reliefs = new ArrayList<Relief>();
        for (Fields relief : fields.objects("reliefs")) {
            LocalDateTime from = time(relief, "from").orElse(SOME_TIME);
            Optional<LocalDateTime> to = time(relief, "to");
            if (to.filter(end -> !end.isAfter(from)).isPresent()) {
                relief.fault("to", "must be after from");
            }
            LocalDateTime end = to.filter(from::isBefore).orElse(from.plusDays(1));
            reliefs.add(new Relief(from, end, Ids.reference(relief, "contact")));
            relief.nothingElse();
        }
        return reliefs;
    }

    private static Optional<LocalDateTime> time(Fields fields, String name) {
        return fields.needs(name).as(name, TIME_RULE, text -> Optional.of(LocalDateTime.parse(text)));
    }

    Ladder ladder(Fields fields) {
        String id = Ids.of(fields);
        List<Rung> rungs =
                fields.objects("rungs").stream().map(CallingReader::rung).toList();
        if (rungs.isEmpty()) {
            fields.fault("rungs", "must hold at least one rung");
        }
        var ladder = new Ladder(
                id,
                fields.as("endsWhen", "must be acknowledged or normal", CallingReader::endsWhen)
                        .orElse(Ladder.EndsWhen.ACKNOWLEDGED),
                rungs.isEmpty() ? List.of(new Rung(List.of(Rung.EVERYONE), USUAL_WAIT, 1)) : rungs,
                fields.whole("again", 0, 100).orElse(0));
        fields.nothingElse();
        return ladder;
    }

    private static Rung rung(Fields fields) {
        boolean asks = fields.as(
                        "ask", "must be shut-in", word -> Optional.of(word).filter("shut-in"::equals))
                .isPresent();
        var rung = new Rung(
                asks ? fields.texts("call") : atLeastOne(fields, "call"),
                fields.duration("wait", Duration.ofSeconds(1), LONGEST_WAIT).orElse(USUAL_WAIT),
                fields.whole("rounds", 1, 100).orElse(1),
                asks);
        fields.nothingElse();
        return rung;
    }

    /** The texts of a list that must not be empty; if it is, somebody who is always there stands in. */
    private static List<String> atLeastOne(Fields fields, String name) {
        List<String> texts = fields.texts(name);
        if (texts.isEmpty()) {
            fields.fault(name, "must name at least one");
        }
        return texts.isEmpty() ? List.of(Rung.EVERYONE) : texts;
    }

    private static Optional<Ladder.EndsWhen> endsWhen(String word) {
        return Stream.of(Ladder.EndsWhen.values())
                .filter(end -> end.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }
}
