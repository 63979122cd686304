package yardlight.escalation.setup;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;

/**
 * Everything the owner has set up, as one value. Ids are unique within their list and every name in it leads somewhere;
 * {@link SetupCheck} tells before one is made.
 */
public final class Setup {

    public static final Setup EMPTY = new Setup(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    private final Map<String, Site> sites;
    private final Map<String, Box> boxes;
    private final Map<String, List<Box>> boxesBySite;
    private final Map<String, List<Box>> boxesByFeed;
    private final Map<String, List<Box>> boxesByLink;
    private final Map<String, Point> points;
    private final Map<String, List<Point>> pumps;
    private final Set<String> explaining;
    private final Map<String, Contact> contacts;
    private final Set<String> channels;
    private final Map<String, Roster> rosters;
    private final Map<String, Ladder> ladders;

    public Setup(
            List<Site> sites,
            List<Box> boxes,
            List<Point> points,
            List<Contact> contacts,
            List<Roster> rosters,
            List<Ladder> ladders) {
        this.sites = byId(sites, Site::id);
        this.boxes = byId(boxes, Box::id);
        this.boxesBySite = boxes.stream().collect(Collectors.groupingBy(Box::site));
        this.boxesByFeed = boxes.stream()
                .filter(box -> box.feed().isPresent())
                .collect(Collectors.groupingBy(box -> box.feed().get()));
        this.boxesByLink = boxes.stream()
                .filter(box -> box.link().isPresent())
                .collect(Collectors.groupingBy(box -> box.link().get()));
        this.points = byId(points, point -> point.site() + "/" + point.id());
        this.pumps = points.stream()
                .filter(point -> point.equipment().pump().isPresent())
                .collect(Collectors.groupingBy(Point::site));
        this.explaining = points.stream()
                .flatMap(point -> point.suppressedWhile().stream().map(other -> point.site() + "/" + other))
                .collect(Collectors.toUnmodifiableSet());
        this.contacts = byId(contacts, Contact::id);
        this.channels = contacts.stream()
                .flatMap(contact -> contact.lines().stream())
                .map(Line::channel)
                .collect(Collectors.toUnmodifiableSet());
        this.rosters = byId(rosters, Roster::id);
        this.ladders = byId(ladders, Ladder::id);
    }

    private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
        var map = new LinkedHashMap<String, T>();
        for (T thing : things) {
            if (map.put(id.apply(thing), thing) != null) {
                throw new IllegalArgumentException("id must be unique: " + id.apply(thing));
            }
        }
        return Collections.unmodifiableMap(map);
    }

    /** The same setup with one more box, which is expected to send no heartbeats. */
    public Setup withBox(String id, String site) {
        var more = new java.util.ArrayList<>(boxes.values());
        more.add(
                new Box(id, site, Optional.empty(), Optional.empty(), true, Optional.empty(), java.time.Duration.ZERO));
        return new Setup(
                List.copyOf(sites.values()),
                more,
                points(),
                List.copyOf(contacts.values()),
                List.copyOf(rosters.values()),
                List.copyOf(ladders.values()));
    }

    /** The same setup in which somebody stands in for a part of a roster, over whoever did before. */
    public Setup withRelief(String roster, Relief relief) {
        List<Roster> changed = rosters.values().stream()
                .map(one -> one.id().equals(roster) ? one.with(relief) : one)
                .toList();
        return new Setup(
                List.copyOf(sites.values()),
                List.copyOf(boxes.values()),
                points(),
                List.copyOf(contacts.values()),
                changed,
                List.copyOf(ladders.values()));
    }

    public Map<String, Site> sites() {
        return sites;
    }

    /** The site as set up. The gateway itself is one too: if nobody has set it up it goes by the first site. */
    public Optional<Site> site(String id) {
        Optional<Site> known = Optional.ofNullable(sites.get(id));
        return id.equals(Site.GATEWAY) ? known.or(() -> Optional.of(gateway())) : known;
    }

    private Site gateway() {
        Optional<Site> first = sites.values().stream().findFirst();
        return new Site(
                Site.GATEWAY,
                "Gateway",
                first.map(Site::zone).orElse(ZoneOffset.UTC),
                first.map(Site::ladder).orElse(""));
    }

    /** The alarm that a carrier is down. */
    public static AlarmKey carrier(String channel) {
        return new AlarmKey(Site.GATEWAY, channel, "down");
    }

    /** Whether this is the alarm that some carrier is down. */
    public static boolean isCarrier(AlarmKey key) {
        return key.equals(carrier(key.point()));
    }

    /** The channels that anybody has a line on. */
    public Set<String> channels() {
        return channels;
    }

    /** One line of a contact; empty when the contact or the line is gone. */
    public Optional<Line> line(String contact, int line) {
        return Optional.ofNullable(contacts.get(contact))
                .filter(known -> line < known.lines().size())
                .map(known -> known.lines().get(line));
    }

    public Map<String, Box> boxes() {
        return boxes;
    }

    public Map<String, Contact> contacts() {
        return contacts;
    }

    public Map<String, Roster> rosters() {
        return rosters;
    }

    /**
     * The contacts that are called when a rung says this: everyone, a contact, or who is on call in a roster, and in the
     * roster that stands in that one.
     */
    public List<String> peopleBehind(String call, Instant now) {
        return call.equals(Rung.EVERYONE)
                ? List.copyOf(contacts.keySet())
                : onCall(call, now, new HashSet<>())
                        .filter(contacts::containsKey)
                        .map(List::of)
                        .orElse(List.of());
    }

    private Optional<String> onCall(String name, Instant now, Set<String> seen) {
        if (!name.startsWith(Rung.ROSTER)) {
            return Optional.of(name);
        }
        Roster roster = rosters.get(name.substring(Rung.ROSTER.length()));
        return roster == null || !seen.add(name)
                ? Optional.empty()
                : roster.onCall(now).flatMap(next -> onCall(next, now, seen));
    }

    public Map<String, Ladder> ladders() {
        return ladders;
    }

    public List<Point> points() {
        return List.copyOf(points.values());
    }

    /** The point as set up, or as it would be if nobody has. */
    public Point point(String site, String point) {
        Point found = known(site, point)
                .orElseGet(() -> site.equals(Site.GATEWAY) ? ours(point) : Point.unknown(point, site));
        boolean serves =
                Optional.ofNullable(sites.get(site)).map(Site::inService).orElse(true);
        return serves ? found : found.outOfService();
    }

    /** The gateway's own points are lines and carriers. */
    private Point ours(String point) {
        return Stop.point(point, contacts.values()).orElseGet(() -> Point.carrier(point));
    }

    /** The point as set up; empty when the board has to say that it wants setting up. */
    public Optional<Point> known(String site, String point) {
        return Optional.ofNullable(points.get(site + "/" + point));
    }

    /** The pumps of the site that empty what this point reads, or press on what it reads, in the order of the setup. */
    public List<Point> pumpsWith(String site, String point) {
        return pumps.getOrDefault(site, List.of()).stream()
                .filter(pump -> pump.equipment().pump().orElseThrow().reaches(point))
                .toList();
    }

    /** The pump that empties the tank whose level this point reads. */
    public Optional<Point> pumpOf(String site, String tank) {
        return pumps.getOrDefault(site, List.of()).stream()
                .filter(pump -> pump.equipment().pump().orElseThrow().empties().equals(Optional.of(tank)))
                .findFirst();
    }

    /** Whether some point of the site is suppressed by design while this alarm, {@code point/condition}, is active. */
    public boolean explains(String site, String local) {
        return explaining.contains(site + "/" + local);
    }

    public List<Box> boxesAt(String site) {
        return boxesBySite.getOrDefault(site, List.of());
    }

    /** The boxes that hang on a power supply of this name, at whatever site. */
    public List<Box> boxesOnFeed(String feed) {
        return boxesByFeed.getOrDefault(feed, List.of());
    }

    /** The boxes that talk over a shared path of this name. */
    public List<Box> boxesOnLink(String link) {
        return boxesByLink.getOrDefault(link, List.of());
    }
}
