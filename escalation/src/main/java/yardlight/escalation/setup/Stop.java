package yardlight.escalation.setup;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Timing;

/**
 * A line by which its contact wants nothing more, as an alarm of the gateway's own site: one for each contact and address, so
 * that another address is another line. It holds until they take it up again.
 */
public final class Stop {

    private static final String CONDITION = "said-stop";
    private static final int LONGEST_NAME = 51;
    private static final int HASH_FROM = 24;

    private Stop() {}

    /** The alarm that this contact wants nothing more at this address. */
    public static AlarmKey key(String contact, String address) {
        byte[] both = (contact + "\n" + address).getBytes(StandardCharsets.UTF_8);
        String hash = UUID.nameUUIDFromBytes(both).toString().substring(HASH_FROM);
        return new AlarmKey(Site.GATEWAY, prefix(contact) + hash, CONDITION);
    }

    private static String prefix(String contact) {
        return contact.substring(0, Math.min(LONGEST_NAME, contact.length())) + "-";
    }

    /** The lines that are stopped by what was said last, among these alarms. */
    public static Set<AlarmKey> among(Collection<Alarm> alarms) {
        return alarms.stream()
                .filter(alarm -> alarm.key().condition().equals(CONDITION)
                        && alarm.key().site().equals(Site.GATEWAY)
                        && alarm.reported())
                .map(Alarm::key)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Whether the contact has no line that is not one of these. */
    public static boolean everywhere(Contact contact, Set<AlarmKey> stops) {
        return !stops.isEmpty()
                && contact.lines().stream().allMatch(line -> stops.contains(key(contact.id(), line.address())));
    }

    /** The line as a point of the gateway, with the name of its contact and of its channel; empty when it is another point. */
    static Optional<Point> point(String id, Collection<Contact> contacts) {
        return contacts.stream()
                .filter(contact -> id.startsWith(prefix(contact.id())))
                .flatMap(contact -> contact.lines().stream()
                        .filter(line ->
                                key(contact.id(), line.address()).point().equals(id))
                        .map(line -> point(id, contact, line)))
                .findFirst();
    }

    private static Point point(String id, Contact contact, Line line) {
        return new Point(
                id,
                Site.GATEWAY,
                contact.name() + " " + line.channel().toUpperCase(Locale.ROOT),
                Optional.empty(),
                Optional.empty(),
                Timing.PLAIN,
                Set.of(),
                true);
    }
}
