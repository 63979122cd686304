package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import yardlight.db.due.DueKey;
import yardlight.escalation.Answer;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.wording.Wellbeing;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.Tried;

class StimuliTest {

    @Test
    void an_alls_well_comes_with_the_gap_that_was_worked_out_beforehand() {
        var heard = new ArrayList<Stimulus>();
        var uncovered = new Wellbeing.Uncovered(
                Fixtures.aSite(),
                Set.of(Priority.LOW),
                Fixtures.at("2026-11-28T21:00"),
                Fixtures.at("2026-11-29T06:00"),
                41);

        new Stimuli(new Ear(heard), () -> Optional.of(uncovered)).tell(new DueKey(DueKey.Kind.WELL, "ana"));

        assertThat(heard).containsExactly(new Stimulus.AllsWellDue("ana", Optional.of(uncovered)));
    }

    private record Ear(List<Stimulus> heard) implements Intake {

        @Override
        public CompletableFuture<Answer> put(Stimulus stimulus) {
            heard.add(stimulus);
            return CompletableFuture.completedFuture(new Answer.Done());
        }

        @Override
        public CompletableFuture<Answer> put(Tried tried) {
            throw new IllegalStateException("nothing was tried");
        }
    }
}
