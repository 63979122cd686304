package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.active;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Stop;
import yardlight.escalation.wording.Links;

/** A notice to Ana waits to be sent while she writes STOP by one of her two lines, or by both. */
class LineStoppedTest {

    private static final Instant NIGHT = at("2026-11-25T02:13");
    private static final String TEXT = "5755550101@txt.example";
    private static final String MAIL = "ana@mesa.example";

    private final AtomicInteger code = new AtomicInteger(47);
    private final Escalator escalator = new Escalator(Links.NONE, code::getAndIncrement);
    private final Picture picture = new Picture(theSetup());

    @BeforeEach
    void ana_is_called() {
        decide(new Stimulus.Reported("mesa-9-box", List.of(active(TANK, NIGHT))));
    }

    @Test
    void whoever_has_none_left_is_not_told_that_all_is_well_and_it_is_not_tried_all_morning() {
        var atSeven = AllsWell.daily(LocalTime.of(7, 0), Fixtures.CHICAGO);
        Night night = new Night(theSetup()).setup("2026-11-25T01:00", Play.told(atSeven, Language.EN, false));
        for (Line line : Fixtures.ana().lines()) {
            night.stimulus("2026-11-25T02:00", new Stimulus.Stopped("ana", line.address(), true, "Ana wrote STOP"));
        }
        night.run("2026-11-26T12:00");

        assertThat(night.texts())
                .filteredOn(text -> text.contact().equals("ana"))
                .noneMatch(text -> text.at().isAfter(Fixtures.at("2026-11-25T02:00")));
        assertThat(night.timeline())
                .filteredOn(line -> line.contains("all's-well"))
                .hasSize(2)
                .allMatch(line -> line.endsWith("is left out: they want nothing more by any line"));
    }

    @Test
    void goes_by_the_next_line() {
        Decision decision = stop(TEXT);

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
        assertThat(decision.entries())
                .extracting(Entry::words)
                .contains("nothing more goes to this line; the next line is tried");
    }

    @Test
    void is_left_alone_when_another_line_is_stopped() {
        stop(MAIL);

        assertThat(notice().line()).isZero();
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void does_not_go_on_to_a_line_that_was_stopped() {
        stop(MAIL);
        decide(new Stimulus.Overdue(notice().id(), 0));
        assertThat(notice().line()).isZero();

        Decision decision =
                decide(new Stimulus.NoticeFate(notice().id(), 0, Stimulus.Fate.REFUSED, "550 no such number"));

        assertThat(notice().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(decision.entries())
                .extracting(Entry::words)
                .contains("refused: 550 no such number; no line is left");
    }

    @Test
    void is_refused_and_its_callout_goes_on_at_once_when_no_line_is_left() {
        stop(MAIL);
        stop(TEXT);

        assertThat(notice().state()).isEqualTo(NoticeState.REFUSED);
        Callout callout = picture.callout(notice().callouts().get(0)).orElseThrow();
        assertThat(callout.place().rung()).isPositive();
        assertThat(callout.facts().told()).doesNotContain("ana");
    }

    @Test
    void has_a_line_of_its_own_for_each_contact_and_address() {
        assertThat(List.of(Stop.key("ana", TEXT), Stop.key("ana", MAIL), Stop.key("ben", TEXT)))
                .doesNotHaveDuplicates()
                .contains(Stop.key("ana", TEXT));
    }

    @Test
    void has_a_key_however_long_the_id_of_its_contact_is() {
        String longest = "a".repeat(64);

        AlarmKey key = Stop.key(longest, TEXT);

        assertThat(key.point()).hasSize(64);
    }

    private Decision stop(String address) {
        return decide(new Stimulus.Stopped("ana", address, true, "Ana wrote STOP"));
    }

    private Decision decide(Stimulus stimulus) {
        Decision decision = escalator.decide(picture, stimulus, NIGHT);
        picture.apply(decision.changes());
        return decision;
    }

    private Notice notice() {
        return picture.notices().get(0);
    }
}
