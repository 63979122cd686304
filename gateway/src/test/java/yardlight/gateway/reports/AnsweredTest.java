package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.db.log.LogLine;
import yardlight.escalation.Fixtures;
import yardlight.gateway.page.Names;

class AnsweredTest {

    private static final Instant AT = Fixtures.at("2026-11-25T02:17");

    private static List<Answered> of(String what, String words) {
        return Answered.of(List.of(new LogLine(47, AT, what, Map.of(), words)), new Names(Fixtures.theSetup()));
    }

    @Test
    void is_who_did_what_and_by_which_way() {
        assertThat(of("answer", "water-tank/high-high acknowledged by ana by link: on my way, is now acknowledged"))
                .containsExactly(new Answered(
                        AT, "ana", "Ana Ruelas", "acknowledged", Optional.of("link"), Optional.empty(), 47));
        assertThat(of("answer", "water-tank/high-high shelved by ben for PT2H: welded by noon, is now shelved"))
                .containsExactly(
                        new Answered(AT, "ben", "Ben Tully", "shelved", Optional.empty(), Optional.empty(), 47));
        assertThat(of("answer", "water-tank/high-high note by owner: acknowledged by nobody"))
                .containsExactly(new Answered(AT, "owner", "owner", "note", Optional.empty(), Optional.empty(), 47));
        assertThat(of("answer", "water-tank/high-high reset by owner, is now normal"))
                .extracting(Answered::by)
                .containsExactly("owner");
    }

    @Test
    void of_a_worse_alarm_of_the_same_cause_is_knowledge_of_this_one() {
        assertThat(of("answer", "water-tank/high acknowledged with water-tank/high-high by ana, is now acknowledged"))
                .containsExactly(new Answered(
                        AT, "ana", "Ana Ruelas", "answered-with", Optional.empty(), Optional.of("high-high"), 47));
    }

    @Test
    void is_nothing_that_the_rules_did_themselves() {
        assertThat(of("callout", "callout 47 answered by ana")).isEmpty();
        assertThat(of("answer", "5755550101 wrote: ok by me; nothing waits")).isEmpty();
    }
}
