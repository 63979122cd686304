package yardlight.gateway.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.gateway.FakeLane;

class HandoverJobTest {

    private final FakeLane lane = new FakeLane();
    private final HandoverJob job = new HandoverJob(Fixtures::theSetup, lane, InstantSource.system());

    @Test
    void notes_a_tour_that_changed_hands_once() {
        job.note(at("2026-11-30T06:59"), at("2026-11-30T07:00"));
        job.note(at("2026-11-30T07:00"), at("2026-11-30T07:01"));

        assertThat(lane.decided).containsExactly(new Stimulus.Handover("crew"));
    }

    @Test
    void makes_up_for_a_handover_that_fell_into_a_stop() {
        job.note(at("2026-11-29T12:00"), at("2026-12-02T12:00"));

        assertThat(lane.decided).containsExactly(new Stimulus.Handover("crew"));
    }

    @Test
    void notes_nothing_while_the_same_person_has_it() {
        job.note(at("2026-11-24T07:00"), at("2026-11-29T07:00"));

        assertThat(lane.decided).isEmpty();
    }
}
