package yardlight.gateway.due;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.due.DueKey;
import yardlight.escalation.Answer;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.SwapSaid;
import yardlight.escalation.wording.Wellbeing;
import yardlight.gateway.lane.Intake;

/** What the engine is told when something is due. */
final class Stimuli {

    private final Intake intake;
    private final Supplier<Optional<Wellbeing.Uncovered>> uncovered;

    /** @param uncovered the gap ahead that an all's-well names, worked out beforehand */
    Stimuli(Intake intake, Supplier<Optional<Wellbeing.Uncovered>> uncovered) {
        this.intake = intake;
        this.uncovered = uncovered;
    }

    CompletableFuture<Answer> tell(DueKey key) {
        return intake.put(of(key));
    }

    private Stimulus of(DueKey key) {
        return switch (key.kind()) {
            case ALARM -> new Stimulus.AlarmDue(AlarmColumns.key(key.subject()));
            case CALLOUT -> new Stimulus.CalloutDue(key.subject());
            case DESK -> new Stimulus.DeskDue(key.subject());
            case WELL -> new Stimulus.AllsWellDue(key.subject(), uncovered.get());
            case SHUT_IN -> new Stimulus.ShutIn(key.subject(), new ShutInSaid.Due());
            case SWAP -> new Stimulus.Swap(new SwapSaid.Due(key.subject()));
            case NOTICE -> new Stimulus.NoticeDue(key.subject());
            case GAUGE -> new Stimulus.GaugeDue(GaugeColumns.key(key.subject()));
            case BOX -> new Stimulus.BoxDue(key.subject());
        };
    }
}
