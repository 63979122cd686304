package yardlight.escalation;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** A setup drawn by lot: any that the owner could have written. */
final class RandomSetup {

    static final List<String> POINTS = List.of("tank", "pump", "door");
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("America/Chicago"), ZoneId.of("America/Denver"), ZoneId.of("America/Phoenix"), ZoneId.of("UTC"));

    private final Random random;
    private final List<String> people;

    RandomSetup(Random random) {
        this.random = random;
        this.people = IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(i -> "person-" + i)
                .toList();
    }

    Setup draw() {
        List<Site> sites = IntStream.range(0, 1 + random.nextInt(2))
                .mapToObj(i -> new Site("site-" + i, "Site " + i, one(ZONES), "ladder-" + random.nextInt(2)))
                .toList();
        List<Box> boxes = sites.stream().map(this::box).toList();
        List<Point> points = sites.stream()
                .flatMap(site ->
                        POINTS.stream().filter(point -> random.nextInt(4) > 0).map(point -> point(site.id(), point)))
                .toList();
        var roster = new Roster(
                "crew",
                one(ZONES),
                LocalDateTime.of(2026, 1, 1, 0, 0).plusHours(random.nextInt(48)),
                Duration.ofHours(6L + random.nextInt(200)),
                people,
                List.of());
        return new Setup(
                sites,
                boxes,
                points,
                people.stream().map(this::contact).toList(),
                List.of(roster),
                List.of(ladder("ladder-0"), ladder("ladder-1")));
    }

    private Box box(Site site) {
        Optional<Duration> every = random.nextBoolean() ? Optional.of(Duration.ofMinutes(10)) : Optional.empty();
        return new Box(
                site.id() + "-box",
                site.id(),
                random.nextBoolean() ? Optional.of("pump") : Optional.empty(),
                Optional.empty(),
                true,
                every,
                Duration.ofMinutes(random.nextInt(20)));
    }

    private Point point(String site, String id) {
        var timing = new Timing(
                Duration.ofSeconds(random.nextInt(3) * 20L),
                Duration.ofSeconds(random.nextInt(3) * 20L),
                random.nextInt(4) == 0,
                random.nextInt(5) == 0 ? Optional.of(Duration.ofMinutes(90)) : Optional.empty(),
                Nuisance.Numbers.USUAL);
        Set<String> explained = id.equals("pump") && random.nextBoolean() ? Set.of("power-pump/power-off") : Set.of();
        Optional<Priority> priority =
                random.nextBoolean() ? Optional.of(one(List.of(Priority.values()))) : Optional.empty();
        return new Point(
                id, site, id.toUpperCase(), Optional.empty(), priority, timing, explained, random.nextInt(15) > 0);
    }

    private Contact contact(String id) {
        ZoneId zone = one(ZONES);
        List<QuietHours> quiet = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            LocalTime from = LocalTime.of(random.nextInt(24), random.nextInt(2) * 30);
            EnumSet<DayOfWeek> days = random.nextInt(4) == 0
                    ? EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY)
                    : EnumSet.allOf(DayOfWeek.class);
            quiet.add(new QuietHours(
                    from, from.plusHours(1 + random.nextInt(11)), zone, one(List.of(Priority.values())), days));
        }
        List<Line> lines = random.nextBoolean()
                ? List.of(new Line("sms-mail", id + "@txt.example"))
                : List.of(new Line("sms-mail", id + "@txt.example"), new Line("mail", id + "@ops.example"));
        return new Contact(id, id, zone, one(List.of(Language.values())), lines, quiet, 1 + random.nextInt(20));
    }

    private Ladder ladder(String id) {
        List<Rung> rungs = IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(i -> new Rung(
                        List.of(one(List.of(one(people), "roster:crew", Rung.EVERYONE))),
                        Duration.ofSeconds(30L * (1 + random.nextInt(30))),
                        1 + random.nextInt(3)))
                .toList();
        return new Ladder(id, one(List.of(Ladder.EndsWhen.values())), rungs, random.nextInt(2));
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
