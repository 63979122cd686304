package yardlight.gateway.board;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;

/** Puts sites and their boxes into words. */
final class Places {

    private final Map<String, BoxWatch> watches;
    private final Instant now;

    Places(Map<String, BoxWatch> watches, Instant now) {
        this.watches = watches;
        this.now = now;
    }

    List<Sheet.Place> of(Setup setup, List<RecordedAlarm> alarms) {
        return setup.sites().values().stream()
                .map(site -> place(site, setup.boxesAt(site.id()), alarms))
                .toList();
    }

    private Sheet.Place place(Site site, List<Box> boxes, List<RecordedAlarm> alarms) {
        List<String> heard = boxes.isEmpty()
                ? List.of("no box set up")
                : boxes.stream().map(this::heard).toList();
        long count = alarms.stream()
                .filter(one -> one.alarm().key().site().equals(site.id()))
                .count();
        return new Sheet.Place(site.name(), heard, (int) count);
    }

    private String heard(Box box) {
        BoxWatch watch = watches.get(box.id());
        if (watch == null) {
            return box.id() + ": never heard";
        }
        String ago = Clockface.ago(watch.heardAt(), now);
        String off = watch.last().feeds().entrySet().stream()
                .filter(feed -> !feed.getValue())
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", "));
        return box.id()
                + (watch.silent() ? ": silent for " + ago : ": heard " + ago + " ago")
                + (off.isEmpty() ? "" : "; power off: " + off);
    }
}
