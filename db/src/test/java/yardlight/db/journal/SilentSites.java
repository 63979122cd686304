package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import yardlight.db.CountingDataSource;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Picture;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/** Sites on one link, silent together: decided from the journal and from a picture in memory, which must agree. */
final class SilentSites {

    private static final Instant BEGAN = Fixtures.at("2026-11-25T01:00");

    private final DataSource source;
    private final int count;
    private final Picture picture;
    private final Deque<Integer> codes = new ArrayDeque<>();
    private final Escalator remembering = new Escalator(Links.NONE, codes::remove);

    SilentSites(DataSource source, int count) {
        this.source = source;
        this.count = count;
        this.picture = new Picture(setup(0));
        boxes(id -> new Stimulus.Beat(id, Heartbeat.BARE), BEGAN);
        boxes(Stimulus.BoxDue::new, BEGAN.plusSeconds(180));
    }

    /** @param gone so many of the sites, from the first on, are not set up */
    private Setup setup(int gone) {
        return new Setup(
                numbers(gone).mapToObj(SilentSites::site).toList(),
                numbers(gone).mapToObj(SilentSites::box).toList(),
                List.of(),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }

    private IntStream numbers(int gone) {
        return IntStream.range(gone, count);
    }

    private static Site site(int number) {
        return new Site("site-" + number, "Site " + number, Fixtures.CHICAGO, "night");
    }

    private static Box box(int number) {
        return new Box(
                "box-" + number,
                "site-" + number,
                Optional.empty(),
                Optional.of("hub"),
                true,
                Optional.of(Duration.ofMinutes(1)),
                Duration.ofMinutes(2));
    }

    /** How many statements it takes when the first of them is no longer set up, at which the alarm lies. */
    long withoutTheFirst() {
        var counting = new CountingDataSource(source);
        decide(counting.proxy(), List.of(new Stimulus.SetupChanged(setup(1), "owner")), BEGAN.plusSeconds(300));
        return counting.queries();
    }

    /** It is set up again. */
    void putBack() {
        decide(source, List.of(new Stimulus.SetupChanged(setup(0), "owner")), BEGAN.plusSeconds(360));
    }

    private void boxes(Function<String, Stimulus> stimulus, Instant now) {
        decide(
                source,
                numbers(0).mapToObj(number -> stimulus.apply("box-" + number)).toList(),
                now);
    }

    /** By a writer that remembers nothing. */
    private void decide(DataSource by, List<Stimulus> stimuli, Instant now) {
        try (var journal = new Journal(by);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(picture.setup());
            var wants = new Wants(picture.setup(), now);
            stimuli.forEach(wants::add);
            sheet.prepare(wants);
            var storing = new Escalator(Links.NONE, () -> {
                codes.add(sheet.nextCode());
                return codes.getLast();
            });
            for (Stimulus stimulus : stimuli) {
                Decision decision = storing.decide(sheet, stimulus, now);
                assertThat(remembered(stimulus, now)).isEqualTo(decision);
                if (stimulus instanceof Stimulus.SetupChanged changed) {
                    sheet.setup(changed.setup());
                }
                sheet.apply(decision.changes());
            }
            writing.commit(sheet, now);
        }
    }

    private Decision remembered(Stimulus stimulus, Instant now) {
        Decision decision = remembering.decide(picture, stimulus, now);
        if (stimulus instanceof Stimulus.SetupChanged changed) {
            picture.setup(changed.setup());
        }
        picture.apply(decision.changes());
        return decision;
    }
}
