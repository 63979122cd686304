package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.Restraint;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Five hundred alarms in ten minutes at twenty sites that all call the same people. */
class StormScenarioTest {

    private static final Instant START = at("2026-11-25T02:13");
    private static final Duration STORM = Duration.ofMinutes(10);
    private static final Duration WAIT = Duration.ofMinutes(5);
    private static final int ALARMS = 500;
    private static final int SITES = 20;
    private static final int MOST_TEXTS = 12;
    private static final List<Priority> LESSER = List.of(Priority.LOW, Priority.MEDIUM, Priority.HIGH);

    private static final Pattern POINT = Pattern.compile("(?i)point[- ](\\d+)");

    private final Map<AlarmKey, Instant> since = new HashMap<>();

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.02, 0.1, 0.3, 1})
    void is_a_dozen_texts_to_each_and_leaves_nothing_out(double critical) {
        for (long seed = 1; seed <= 40; seed++) {
            since.clear();
            Night night = storm(new Random(seed), critical);
            night.run(local(START.plus(STORM).plus(Restraint.USUAL_PACE)));

            String storm = "seed " + seed;
            for (String contact : List.of("ana", "ben")) {
                assertThat(texts(night, contact))
                        .as("%s, to %s", storm, contact)
                        .hasSizeLessThanOrEqualTo(MOST_TEXTS);
            }
            assertThat(events(night)).as(storm).isEqualTo(ALARMS);
            night.run(local(START.plus(STORM).plus(WAIT).plus(Restraint.USUAL_PACE)));
            assertThat(since.keySet()).as(storm).allSatisfy(key -> isTold(night, key));
            tellsTheWorstFirst(night, texts(night, "ana"), storm);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void answered_with_one_word_is_over(long seed) {
        Night night = storm(new Random(seed), 0.1);
        Instant answer = START.plus(STORM).plus(Restraint.USUAL_PACE).plusSeconds(1);
        night.run(local(answer.minusSeconds(1)));
        for (Alarm alarm : night.picture().alarms()) {
            night.stimulus(local(answer), new Stimulus.Acknowledge(alarm.key(), "ana", "text", Optional.empty()));
        }
        night.run(local(answer.plusSeconds(3_600)));

        assertThat(night.picture().callouts()).noneMatch(Callout::live);
        List<Night.Text> after =
                night.texts().stream().filter(text -> text.at().isAfter(answer)).toList();
        assertThat(after).as("that Ana has it, and nothing else").allMatch(Night.Text::isNews);
        assertThat(after).hasSizeBetween(1, 2).extracting(Night.Text::contact).containsOnly("ben");
    }

    /** At random times, so that there are bursts and lulls in it. */
    private Night storm(Random random, double critical) {
        Night night = new Night(twentySites());
        var times = random.doubles(ALARMS - 2)
                .map(share -> share * STORM.toSeconds())
                .boxed();
        var all = new ArrayList<>(times.sorted().toList());
        all.add(0, 0.0);
        all.add((double) STORM.toSeconds());
        for (int i = 0; i < ALARMS; i++) {
            var key = new AlarmKey("site-" + random.nextInt(SITES), "point-" + i, "high");
            Instant when = START.plusMillis((long) (all.get(i) * 1_000));
            Priority priority =
                    random.nextDouble() < critical ? Priority.CRITICAL : LESSER.get(random.nextInt(LESSER.size()));
            since.put(key, when);
            night.active(local(when), key, priority);
        }
        return night;
    }

    /** Somebody has a text about it before the wait of a rung is over; at once, or as one of the many of its site. */
    private void isTold(Night night, AlarmKey key) {
        List<String> callouts = night.picture().callouts().stream()
                .filter(callout -> callout.facts().alarms().contains(key))
                .map(Callout::id)
                .toList();
        Instant when = since.get(key);
        assertThat(night.texts())
                .as("a text soon after %s", key)
                .anyMatch(text -> text.callouts().stream().anyMatch(callouts::contains)
                        && !text.at().isBefore(when)
                        && !text.at().isAfter(when.plus(WAIT).plus(Restraint.USUAL_PACE)));
    }

    /** The text that first gathers several begins with one than which nothing worse came since the text before it. */
    private void tellsTheWorstFirst(Night night, List<Night.Text> texts, String storm) {
        int gathered = IntStream.range(0, texts.size())
                .filter(i -> texts.get(i).words().matches("\\d+ alarms at \\d+ sites\\. .*"))
                .findFirst()
                .orElseThrow();
        Night.Text text = texts.get(gathered);
        Matcher named = POINT.matcher(text.words());
        assertThat(named.find()).as("%s names a point", text.words()).isTrue();
        Priority first = priority(night, "point-" + named.group(1));
        Instant before = texts.get(gathered - 1).at();
        since.forEach((key, when) -> {
            if (when.isAfter(before) && !when.isAfter(text.at())) {
                assertThat(priority(night, key.point()))
                        .as("%s: %s", storm, text.words())
                        .isLessThanOrEqualTo(first);
            }
        });
    }

    private static Priority priority(Night night, String point) {
        return night.picture().alarms().stream()
                .filter(alarm -> alarm.key().point().equals(point))
                .findFirst()
                .orElseThrow()
                .priority();
    }

    private static List<Night.Text> texts(Night night, String contact) {
        return night.texts().stream()
                .filter(text -> text.contact().equals(contact))
                .toList();
    }

    private static long events(Night night) {
        return night.timeline().stream()
                .filter(line -> line.matches("\\S+ \\S+  \\S+/\\S+ active.*"))
                .count();
    }

    private static Setup twentySites() {
        List<Site> sites = IntStream.range(0, SITES)
                .mapToObj(i -> new Site("site-" + i, "Site " + i, Fixtures.CHICAGO, "night"))
                .toList();
        List<Box> boxes = sites.stream()
                .map(site -> new Box(
                        site.id() + "-box",
                        site.id(),
                        Optional.empty(),
                        Optional.empty(),
                        true,
                        Optional.empty(),
                        Duration.ofMinutes(2)))
                .toList();
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ana"), WAIT, 2),
                        new Rung(List.of("ben"), WAIT, 1),
                        new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 3)),
                1);
        var ana = Fixtures.ana();
        return new Setup(
                sites,
                boxes,
                List.of(),
                List.of(
                        new Contact(ana.id(), ana.name(), ana.zone(), ana.language(), ana.lines(), List.of(), 20),
                        Fixtures.ben()),
                List.of(),
                List.of(ladder));
    }

    private static String local(Instant instant) {
        return LocalDateTime.ofInstant(instant, Fixtures.CHICAGO).toString();
    }
}
