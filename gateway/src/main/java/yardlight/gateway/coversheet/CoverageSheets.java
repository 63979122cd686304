package yardlight.gateway.coversheet;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.coverage.Heard;
import yardlight.escalation.coverage.Stretch;
import yardlight.escalation.setup.Site;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.GapWords;
import yardlight.gateway.coverage.Outlook;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Hours;
import yardlight.gateway.page.HoursDrawing;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Makes the page of one site's coverage. */
@Component
class CoverageSheets {

    private static final Duration WEEKS = Duration.ofDays(28);
    private static final Duration DAYS = Duration.ofDays(3);
    private static final int MOST_TIMES = 500;
    private static final int MOST_WHO = 60;

    private final Coverages coverages;
    private final MessageSource words;
    private final InstantSource clock;

    CoverageSheets(Coverages coverages, MessageSource words, InstantSource clock) {
        this.coverages = coverages;
        this.words = words;
        this.clock = clock;
    }

    CoverageSheet of(Site site, Locale locale) {
        Instant now = clock.instant();
        Instant end = now.plus(Outlook.AHEAD);
        var tongue = new Tongue(words, locale);
        var face = new Clockface(site.zone(), now, locale);
        List<CoverageSheet.Group> groups = site.inService()
                ? coverages.ask(now, end, found -> new Made(found, site, now, tongue).groups())
                : List.of();
        String until = face.read(LocalDate.ofInstant(end, site.zone()));
        return new CoverageSheet(site.id(), site.name(), site.ladder(), site.inService(), until, groups);
    }

    /** One page while it is made. */
    private record Made(Coverages.Found found, Site site, Instant now, Tongue tongue) {

        List<CoverageSheet.Group> groups() {
            Map<List<Stretch>, Set<Priority>> same = new LinkedHashMap<>();
            Priority[] all = Priority.values();
            for (int i = all.length - 1; i >= 0; i--) {
                same.computeIfAbsent(found.coverage().of(site.id(), all[i]), any -> EnumSet.noneOf(Priority.class))
                        .add(all[i]);
            }
            return same.entrySet().stream()
                    .map(one -> group(one.getValue(), one.getKey()))
                    .toList();
        }

        private CoverageSheet.Group group(Set<Priority> priorities, List<Stretch> stretches) {
            Priority one = priorities.iterator().next();
            List<Gap> gaps = of(found.coverage().gaps(site.id()), one);
            Instant soon = now.plus(WEEKS);
            List<Gap> first =
                    gaps.stream().filter(gap -> gap.from().isBefore(soon)).toList();
            List<Gap> later = gaps.subList(first.size(), gaps.size());
            return new CoverageSheet.Group(
                    one.word(),
                    tongue.say("coverage.group", words().priorities(priorities)),
                    summary(gaps),
                    first.isEmpty() ? Optional.empty() : Optional.of(drawing(first, stretches)),
                    reasons(first),
                    reasons(later),
                    unproven(of(found.coverage().unproven(site.id()), one)),
                    who(stretches));
        }

        private GapWords words() {
            return new GapWords(tongue, found.setup(), now);
        }

        private static List<Gap> of(List<Gap> gaps, Priority priority) {
            return gaps.stream()
                    .filter(gap -> gap.priorities().contains(priority))
                    .map(gap -> new Gap(gap.from(), gap.to(), Set.of(priority)))
                    .toList();
        }

        private String summary(List<Gap> gaps) {
            return Gaps.ahead(gaps)
                    .map(ahead -> tongue.say(
                            ahead.more() == 0 ? "coverage.gaps.one" : "coverage.gaps.many",
                            span(ahead.named()),
                            gaps.size()))
                    .orElseGet(() -> tongue.say("coverage.calm"));
        }

        private String span(Gap gap) {
            return words().span(site.id(), gap.from(), gap.to());
        }

        private HoursDrawing drawing(List<Gap> gaps, List<Stretch> stretches) {
            var whole = new HoursDrawing.Span(now, now.plus(WEEKS), false);
            Set<Instant> never = stretches.stream()
                    .filter(stretch -> stretch.first().isEmpty())
                    .map(Stretch::from)
                    .collect(Collectors.toSet());
            List<HoursDrawing.Span> marks = gaps.stream()
                    .map(gap -> new HoursDrawing.Span(gap.from(), gap.to(), never.contains(gap.from())))
                    .toList();
            return HoursDrawing.of(whole, marks, new Hours(site.zone(), tongue.locale()), tongue);
        }

        private List<CoverageSheet.Reason> reasons(List<Gap> gaps) {
            var times = new LinkedHashMap<String, List<String>>();
            gaps.forEach(gap -> times.computeIfAbsent(
                            words().reasons(found.coverage().why(site.id(), gap)), any -> new ArrayList<>())
                    .add(span(gap)));
            return times.entrySet().stream()
                    .map(one -> new CoverageSheet.Reason(one.getKey(), shortened(one.getValue())))
                    .toList();
        }

        private List<String> shortened(List<String> times) {
            var shown = new ArrayList<>(times.subList(0, Math.min(MOST_TIMES, times.size())));
            if (times.size() > shown.size()) {
                shown.add(tongue.say("coverage.rows.more", times.size() - shown.size()));
            }
            return shown;
        }

        private String unproven(List<Gap> times) {
            if (times.isEmpty()) {
                return "";
            }
            int more = times.size() - 1;
            return tongue.say("coverage.weak", span(times.get(0)))
                    + (more == 0 ? "" : tongue.say(more == 1 ? "coverage.more.one" : "coverage.more.many", more));
        }

        private List<String> who(List<Stretch> stretches) {
            return stretches.stream()
                    .filter(stretch -> stretch.from().isBefore(now.plus(DAYS)))
                    .limit(MOST_WHO)
                    .map(stretch -> tongue.say(
                            "coverage.row",
                            words().span(site.id(), stretch.from(), stretch.to()),
                            stretch.first().map(this::person).orElseGet(() -> tongue.say("coverage.first.none"))
                                    + stretch.second()
                                            .map(next -> tongue.say("coverage.then", person(next)))
                                            .orElse("")))
                    .toList();
        }

        private String person(Heard heard) {
            String name = new Names(found.setup()).contact(heard.contact());
            String when = heard.after()
                    .map(after -> after.isZero()
                            ? tongue.say("coverage.first.after", name)
                            : tongue.say("coverage.first.later", name, Telling.length(after)))
                    .orElseGet(() -> tongue.say(
                            "coverage.first.at",
                            name,
                            words().time(site.id(), heard.at().orElseThrow())));
            return when + " " + tongue.say("coverage.by", lines(heard.contact()));
        }

        private String lines(String contact) {
            return KnownLines.of(found.setup().contacts().get(contact), found.health()).stream()
                    .map(line -> tongue.say(
                            line.proven(found.now()) ? "coverage.line.proven" : "coverage.line.unproven",
                            line.key().channel()))
                    .collect(Collectors.joining(", "));
        }
    }
}
