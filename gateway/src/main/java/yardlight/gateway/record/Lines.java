package yardlight.gateway.record;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import yardlight.db.log.LogLine;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Lines of the log as a page shows them. */
final class Lines {

    /**
     * One line.
     *
     * @param time with its date and zone: a record is read years later
     * @param kind in the reader's language
     * @param words in English, as it stands in the log
     * @param site its name; may be empty, as the alarm's and the contact's id
     * @param more what else it is about, each a word and an id
     */
    record Line(
            long number,
            String time,
            String kind,
            String words,
            String siteId,
            String site,
            String alarm,
            String contact,
            List<String> more) {}

    private final Setup setup;
    private final Tongue tongue;
    private final ZoneId zone;

    Lines(Setup setup, Tongue tongue, ZoneId zone) {
        this.setup = setup;
        this.tongue = tongue;
        this.zone = zone;
    }

    List<Line> of(List<LogLine> lines) {
        return lines.stream().map(this::of).toList();
    }

    Line of(LogLine line) {
        Optional<String> site = Optional.ofNullable(line.about().get("site"));
        return new Line(
                line.line(),
                time(line.at(), site),
                tongue.say("kind." + line.what()),
                line.words(),
                site.filter(id -> setup.site(id).isPresent()).orElse(""),
                site.map(new Names(setup)::site).orElse(""),
                line.about().getOrDefault("alarm", ""),
                Optional.ofNullable(line.about().get("contact"))
                        .map(new Names(setup)::contact)
                        .orElse(""),
                line.about().entrySet().stream()
                        .map(one -> one.getKey() + " " + one.getValue())
                        .toList());
    }

    private String time(Instant at, Optional<String> site) {
        ZoneId there = site.flatMap(setup::site).map(Site::zone).orElse(zone);
        return at.atZone(there).format(DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss zzz", tongue.locale()));
    }

    /** A time further back, to say how far was looked. */
    String time(Instant at) {
        return time(at, Optional.empty());
    }
}
