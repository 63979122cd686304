package yardlight.escalation.coverage;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Setups by lot: up to four people with quiet hours, two rosters with reliefs, one ladder; around a day of interest. */
final class RandomSetup {

    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("America/Chicago"), ZoneId.of("America/Denver"), ZoneId.of("America/Phoenix"), ZoneId.of("UTC"));
    private static final List<Duration> TOURS =
            List.of(Duration.ofHours(7), Duration.ofHours(12), Duration.ofDays(1), Duration.ofDays(7));

    private final Random random;
    private final LocalDateTime around;
    private final List<String> ids = new ArrayList<>();

    private RandomSetup(Random random, LocalDateTime around) {
        this.random = random;
        this.around = around;
    }

    static Setup draw(Random random, LocalDateTime around) {
        return new RandomSetup(random, around).setup();
    }

    private Setup setup() {
        int people = 1 + random.nextInt(4);
        for (int i = 0; i < people; i++) {
            ids.add("p" + i);
        }
        List<Contact> contacts = ids.stream().map(this::contact).toList();
        List<Roster> rosters = List.of(roster("r0", List.of()), roster("r1", List.of("roster:r0")));
        var site = new Site("s", "S", ZONES.get(0), "l");
        return new Setup(List.of(site), List.of(), List.of(), contacts, rosters, List.of(ladder()));
    }

    private Contact contact(String id) {
        var quiet = new ArrayList<QuietHours>();
        for (int i = random.nextInt(3); i > 0; i--) {
            quiet.add(quiet());
        }
        List<Line> lines = random.nextInt(8) == 0 ? List.of() : List.of(new Line("mail", id + "@ranch.example"));
        return new Contact(id, id, zone(), Language.EN, lines, quiet, 20);
    }

    private QuietHours quiet() {
        LocalTime from = time();
        LocalTime to = time();
        while (to.equals(from)) {
            to = time();
        }
        Set<DayOfWeek> days = random.nextInt(3) > 0
                ? EnumSet.allOf(DayOfWeek.class)
                : EnumSet.of(DayOfWeek.of(1 + random.nextInt(7)), DayOfWeek.of(1 + random.nextInt(7)));
        return new QuietHours(from, to, zone(), Priority.values()[random.nextInt(4)], days);
    }

    /** More often than not near the hours at which clocks are changed. */
    private LocalTime time() {
        int minutes = random.nextBoolean() ? random.nextInt(240) : random.nextInt(1440);
        return LocalTime.of(minutes / 60, minutes % 60);
    }

    private Roster roster(String id, List<String> more) {
        var order = new ArrayList<>(more);
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            order.add(ids.get(random.nextInt(ids.size())));
        }
        var reliefs = new ArrayList<Relief>();
        for (int i = random.nextInt(3); i > 0; i--) {
            LocalDateTime from = around.plusMinutes(random.nextInt(2880) - 1440);
            reliefs.add(
                    new Relief(from, from.plusMinutes(1 + random.nextInt(900)), ids.get(random.nextInt(ids.size()))));
        }
        LocalDateTime start = around.minusDays(random.nextInt(20)).plusMinutes(random.nextInt(1440));
        return new Roster(id, zone(), start, TOURS.get(random.nextInt(TOURS.size())), order, reliefs);
    }

    private Ladder ladder() {
        var rungs = new ArrayList<Rung>();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            var call = new ArrayList<String>();
            for (int j = 1 + random.nextInt(2); j > 0; j--) {
                call.add(entry());
            }
            rungs.add(new Rung(call, Duration.ofMinutes(1 + random.nextInt(90)), 1 + random.nextInt(3)));
        }
        return new Ladder("l", Ladder.EndsWhen.ACKNOWLEDGED, rungs, random.nextInt(2));
    }

    private String entry() {
        int which = random.nextInt(10);
        if (which == 0) {
            return Rung.EVERYONE;
        }
        return which < 5 ? Rung.ROSTER + "r" + random.nextInt(2) : ids.get(random.nextInt(ids.size()));
    }

    private ZoneId zone() {
        return ZONES.get(random.nextInt(ZONES.size()));
    }
}
