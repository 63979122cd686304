package yardlight.gateway.ladders;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.util.MultiValueMap;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.walltime.WallTime;
import yardlight.gateway.page.Names;

/**
 * Which alarm is to be rehearsed, as it stands in the form.
 *
 * @param where site and point, {@code mesa-9/water-tank}
 * @param priority empty for the point's own
 * @param at a local time at the site, {@code 2026-11-28T02:10}
 */
record Ask(String where, String condition, String priority, String at) {

    /** The hour at which nobody wants to be the only one who is asked. */
    private static final LocalTime DEEP_NIGHT = LocalTime.of(2, 10);

    private static final String ANY_POINT = "point";

    /** What a form asks that says nothing yet. */
    static Ask usual(Setup setup, String site, Instant now) {
        String point = setup.points().stream()
                .filter(one -> one.site().equals(site))
                .map(one -> one.id())
                .findFirst()
                .orElse(ANY_POINT);
        LocalDateTime local = LocalDateTime.ofInstant(now, new Names(setup).zone(site));
        LocalDateTime night = local.toLocalDate().atTime(DEEP_NIGHT);
        LocalDateTime next = night.isAfter(local) ? night : night.plusDays(1);
        return new Ask(site + "/" + point, "high-high", "", next.toString());
    }

    /** As it was sent; what was not is as usual. */
    static Ask read(MultiValueMap<String, String> sent, Ask usual) {
        return new Ask(
                sent(sent, "where", usual.where),
                sent(sent, "condition", usual.condition),
                sent(sent, "priority", usual.priority),
                sent(sent, "at", usual.at));
    }

    private static String sent(MultiValueMap<String, String> sent, String name, String usual) {
        return sent.containsKey(name) ? LadderForm.field(sent, name) : usual;
    }

    String site() {
        return where.split("/", 2)[0];
    }

    /** What cannot be asked: by field, the last word of the words that say why. */
    Map<String, String> mistakes(Setup setup) {
        var wrong = new LinkedHashMap<String, String>();
        String[] place = where.split("/", -1);
        if (place.length != 2 || !setup.sites().containsKey(place[0]) || !id(place[1])) {
            wrong.put("where", "where");
        }
        if (!id(condition)) {
            wrong.put("condition", "condition");
        }
        if (!priority.isEmpty() && Priority.of(priority).isEmpty()) {
            wrong.put("priority", "priority");
        }
        if (time().isEmpty()) {
            wrong.put("at", "at");
        }
        return wrong;
    }

    private static boolean id(String text) {
        return AlarmKey.ID.matcher(text).matches();
    }

    private Optional<LocalDateTime> time() {
        try {
            return Optional.of(LocalDateTime.parse(at).truncatedTo(ChronoUnit.MINUTES))
                    .filter(time -> time.getYear() >= 2000 && time.getYear() < 2200);
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }

    /** @throws java.util.NoSuchElementException if there are {@link #mistakes} */
    Rehearsal.Question question(ZoneId zone) {
        return question(WallTime.instant(time().orElseThrow(), zone));
    }

    Rehearsal.Question question(Instant instant) {
        String[] place = where.split("/", 2);
        return new Rehearsal.Question(
                new AlarmKey(place[0], place[1], condition), Priority.of(priority), instant, Map.of());
    }
}
