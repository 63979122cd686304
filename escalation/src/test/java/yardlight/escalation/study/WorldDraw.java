package yardlight.escalation.study;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Draws a small operator by lot: 3 to 12 sites, 1 to 3 boxes each. */
final class WorldDraw {

    /** The one who is called first and answers. */
    static final String FIRST = "ana";

    private static final long HOUR = 3_600_000;
    private static final long DAY = 24 * HOUR;
    private static final long[] EVERY = {60_000, 60_000, 60_000, 300_000, 300_000, 900_000};

    private final Facts facts;
    private final SplittableRandom random;
    private final List<String> feeds = new ArrayList<>();
    private final List<World.Link> links = new ArrayList<>();
    private final List<FieldBox> boxes = new ArrayList<>();
    private long every;

    WorldDraw(Facts facts, SplittableRandom random) {
        this.facts = facts;
        this.random = random;
    }

    World draw() {
        int sites = 3 + random.nextInt(10);
        every = EVERY[random.nextInt(EVERY.length)];
        int[] first = new int[sites];
        int[] second = new int[sites];
        for (int site = 0; site < sites; site++) {
            boolean shares = site > 0 && facts.chance(Fact.SHARED_FEED, random);
            first[site] = shares ? first[site - 1] : feed("mains-" + site);
            second[site] = facts.chance(Fact.SECOND_FEED, random) ? feed("pump-" + site) : World.NONE;
        }
        int shared = Math.max(1, sites / 3);
        for (int link = 0; link < shared; link++) {
            boolean hub = facts.chance(Fact.HUBS, random);
            links.add(new World.Link(
                    "link-" + link,
                    hub ? first[random.nextInt(sites)] : World.NONE,
                    hub && !facts.chance(Fact.HUBS_BACKED, random) ? 0 : hours(Fact.BACKUP_HOURS)));
        }
        for (int site = 0; site < sites; site++) {
            boolean own = facts.chance(Fact.OWN_LINK, random);
            int link = own ? ownLink(site) : random.nextInt(shared);
            int count = 1 + random.nextInt(3);
            for (int box = 0; box < count; box++) {
                boxes.add(box(site, box, new int[] {first[site], second[site]}, link));
            }
        }
        long grace = 2 * every;
        return new World(
                facts, List.copyOf(boxes), List.copyOf(links), List.copyOf(feeds), every, every + grace, setup(sites));
    }

    private int feed(String name) {
        feeds.add(name);
        return feeds.size() - 1;
    }

    private int ownLink(int site) {
        links.add(new World.Link("own-" + site, World.NONE, hours(Fact.BACKUP_HOURS)));
        return links.size() - 1;
    }

    private FieldBox box(int site, int number, int[] feedsHere, int link) {
        boolean two = feedsHere[1] != World.NONE;
        int at = two && random.nextBoolean() ? 1 : 0;
        boolean hasBattery = facts.chance(Fact.BATTERIES, random);
        boolean worn = facts.chance(Fact.WORN, random);
        boolean senses = hasBattery && facts.chance(Fact.SENSES, random);
        boolean gasps = !hasBattery && facts.chance(Fact.LAST_GASP, random);
        boolean watches = two && facts.chance(Fact.WATCHES, random);
        return new FieldBox(
                "box-" + site + "-" + number,
                "site-" + site,
                feedsHere[at],
                link,
                watches ? feedsHere[1 - at] : World.NONE,
                hasBattery && !worn ? battery() : 0,
                hasBattery,
                senses,
                gasps,
                facts.of(Fact.LOSS_MOST) * random.nextDouble(),
                random.nextLong(HOUR, 120 * DAY),
                facts.chance(Fact.WRONG_CLOCKS, random) ? random.nextLong(-365 * DAY, 365 * DAY) : 0,
                facts.chance(Fact.WRAPS, random),
                !facts.chance(Fact.NO_UPTIME, random),
                random.nextLong(every),
                -65 - 45 * random.nextDouble());
    }

    private long battery() {
        double least = facts.of(Fact.BATTERY_LEAST_HOURS);
        double most = facts.of(Fact.BATTERY_MOST_HOURS);
        return Math.round(least * StrictMath.pow(most / least, random.nextDouble()) * HOUR);
    }

    private long hours(Fact fact) {
        return Math.round(facts.of(fact) * HOUR);
    }

    private Setup setup(int count) {
        var sites = new ArrayList<Site>();
        for (int site = 0; site < count; site++) {
            sites.add(new Site("site-" + site, "Site " + site, ZoneOffset.UTC, "night"));
        }
        List<Box> known = boxes.stream().map(this::known).toList();
        var contact = new Contact(
                FIRST,
                "Ana Ruelas",
                ZoneOffset.UTC,
                Language.EN,
                List.of(new Line("sms-mail", "5755550101@txt.example")),
                List.of(),
                20);
        var ladder = new Ladder(
                "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of(FIRST), Duration.ofMinutes(5), 2)), 1);
        return new Setup(sites, known, List.of(), List.of(contact), List.of(), List.of(ladder));
    }

    private Box known(FieldBox box) {
        return new Box(
                box.id(),
                box.site(),
                Optional.of(feeds.get(box.feed())),
                Optional.of(links.get(box.link()).name()),
                box.hasBattery(),
                Optional.of(Duration.ofMillis(every)),
                Duration.ofMillis(2 * every));
    }
}
