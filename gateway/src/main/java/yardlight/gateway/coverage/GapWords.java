package yardlight.gateway.coverage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.coverage.Why;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * Puts gaps into words, by the clock of their site.
 *
 * @param setup knows the names and the clocks of sites
 * @param now a gap that has begun before it is told by its end alone
 */
public record GapWords(Tongue tongue, Setup setup, Instant now) {

    /** Within so many days the day of the week says which day is meant. */
    private static final int WEEK = 6;

    /** {@code nobody would hear low and medium alarms Sat 9:00 PM to Sun 6:00 AM, and 41 more times}. */
    public String ahead(String site, Gaps.Ahead ahead) {
        Gap gap = ahead.named();
        String which = priorities(gap.priorities());
        String words = tongue.say("coverage.unheard", which, span(site, gap.from(), gap.to()));
        return ahead.more() == 0
                ? words
                : words + tongue.say(ahead.more() == 1 ? "coverage.more.one" : "coverage.more.many", ahead.more());
    }

    /** The same of each site that an edit leaves with new gaps, with its name before it. */
    public List<String> opened(Opened opened, int most) {
        return opened.sites().keySet().stream()
                .sorted()
                .limit(most)
                .map(site -> new Names(setup).site(site) + ": " + ahead(site, opened.of(site)))
                .toList();
    }

    /** {@code Sat 9:00 PM to Sun 6:00 AM}, {@code now to Sun 6:00 AM}. */
    public String span(String site, Instant from, Instant to) {
        return from.isAfter(now)
                ? tongue.say("coverage.span", time(site, from), time(site, to))
                : tongue.say("coverage.span.now", time(site, to));
    }

    /** A time by the clock of the site, with as much of the date as it needs. */
    public String time(String site, Instant at) {
        ZoneId zone = new Names(setup).zone(site);
        var clock = new Clockface(zone, now, tongue.locale());
        LocalDate last = LocalDate.ofInstant(now, zone).plusDays(WEEK);
        return LocalDate.ofInstant(at, zone).isAfter(last) ? clock.readWithDay(at) : clock.readWithinWeek(at);
    }

    /** {@code low and medium}, {@code low, medium and high}; {@code all} of them in one word. */
    public String priorities(Set<Priority> priorities) {
        return priorities.size() == Priority.values().length
                ? tongue.say("coverage.priority.all")
                : listed(priorities.stream()
                        .map(priority -> tongue.say("coverage.priority." + priority.word()))
                        .toList());
    }

    /** The reasons, in a row. */
    public String reasons(Collection<Why> whys) {
        return whys.stream()
                .map(why -> tongue.say("coverage.why." + why.word()))
                .collect(Collectors.joining("; "));
    }

    private String listed(List<String> words) {
        var all = new StringBuilder();
        for (Iterator<String> each = words.iterator(); each.hasNext(); ) {
            String word = each.next();
            boolean last = !each.hasNext();
            if (!all.isEmpty()) {
                all.append(last ? " " + tongue.say("coverage.and") + " " : ", ");
            }
            all.append(word);
        }
        return all.toString();
    }
}
