package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.measured;
import static yardlight.escalation.Fixtures.theSetup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** The night that the README prints is a night that the engine plays. */
class NightInTheReadmeTest {

    private final List<String> page = new ArrayList<>();

    @Test
    void reads_as_it_is_played() throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"));

        assertThat(readme).contains("```\n" + String.join("\n", play()) + "\n```");
    }

    private List<String> play() {
        var simulation = new Simulation(setup(), new Escalator(Links.NONE, new AtomicInteger(47)::getAndIncrement));
        simulation.watch(this::write);
        simulation.watch(step -> carry(simulation, step));
        post(
                simulation,
                "2026-11-25T02:13",
                report(TANK, true, Optional.of(Priority.HIGH), measured("18.4", "18.0", "ft")));
        var battery = new AlarmKey("mesa-9", "battery", "low");
        post(
                simulation,
                "2026-11-25T03:40",
                report(battery, true, Optional.of(Priority.LOW), measured("11.6", "11.8", "V")));
        post(simulation, "2026-11-25T04:02", report(TANK, false, Optional.empty(), Measured.NOTHING));
        simulation.run(at("2026-11-25T06:04"));
        return page;
    }

    private static void post(Simulation simulation, String local, Report report) {
        var now = new Report(
                report.key(), report.box(), report.active(), report.priority(), report.measured(), at(local), false);
        simulation.at(at(local), new Stimulus.Reported("mesa-9-box", List.of(now)));
    }

    private static Report report(AlarmKey key, boolean active, Optional<Priority> priority, Measured measured) {
        return new Report(key, Optional.of("mesa-9-box"), active, priority, measured, at("2026-11-25T00:00"), false);
    }

    private void write(Happening step) {
        step.decision().entries().stream()
                .filter(entry -> entry.what() == Entry.What.EVENT)
                .forEach(entry -> line(step, "box    " + entry.words()));
        for (Notice notice : step.decision().changes().notices()) {
            String name = name(notice.contact());
            if (notice.state() == NoticeState.QUEUED) {
                line(step, "text   to " + name + ": " + notice.text());
            } else if (notice.state() == NoticeState.HELD && notice.purpose() == Purpose.CALL) {
                line(step, "held   for " + name + " until 06:00, when quiet hours end");
            }
        }
        for (Callout callout : step.decision().changes().callouts()) {
            if (callout instanceof Callout.Answered answered) {
                line(step, "answer " + name(answered.by()) + " has it");
            }
        }
    }

    private void line(Happening step, String words) {
        LocalDateTime local = LocalDateTime.ofInstant(step.at(), Fixtures.CHICAGO);
        page.add(local.toLocalTime() + "  " + words);
    }

    /** The carrier takes everything; Ben answers after three minutes, and Ana once she is up. */
    private static void carry(Simulation simulation, Happening step) {
        for (Notice notice : step.decision().changes().notices()) {
            if (notice.state() == NoticeState.QUEUED) {
                simulation.at(
                        step.at(),
                        new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 OK"));
                boolean awake = notice.contact().equals("ben") || step.at().isAfter(at("2026-11-25T05:00"));
                if (awake) {
                    var answer = new Stimulus.AnswerNotice(notice.id(), "link");
                    simulation.at(step.at().plus(Duration.ofMinutes(3)), answer);
                }
            }
        }
    }

    /** Ana twice, then Ben. Both are left alone at night below high. */
    private static Setup setup() {
        Setup given = theSetup();
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ana"), Duration.ofMinutes(5), 2),
                        new Rung(List.of("ben"), Duration.ofMinutes(5), 1)),
                1);
        return new Setup(
                        List.copyOf(given.sites().values()),
                        List.of(),
                        given.points(),
                        List.of(Fixtures.ana(), quiet(Fixtures.ben())),
                        List.of(),
                        List.of(ladder))
                .withBox("mesa-9-box", "mesa-9");
    }

    private static String name(String contact) {
        return theSetup().contacts().get(contact).name();
    }

    private static Contact quiet(Contact contact) {
        return new Contact(
                contact.id(),
                contact.name(),
                contact.zone(),
                contact.language(),
                contact.lines(),
                Fixtures.ana().quiet(),
                contact.textsPerHour());
    }
}
