package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.setup.Setup;

/** What boxes said in a past time, made of what the log says of the alarms. What came in one moment from one site came in one go. */
final class PastReports {

    /** An alarm that shows itself so soon after the end of its shelf began behind it. */
    private static final Duration MOMENT = Duration.ofSeconds(30);

    private record When(Instant at, String site, Optional<Stimulus> alone) {}

    private final Setup setup;
    private final Past past;
    private final Map<When, List<Report>> agenda = new LinkedHashMap<>();
    private final Map<AlarmKey, Instant> shelves = new HashMap<>();

    /** @param setup as {@link PastStage} has it */
    PastReports(Setup setup, Past past) {
        this.setup = setup;
        this.past = past;
    }

    /** One after the other, in the order in which they happened; what began after the time does not belong to it. */
    void take(PastDeed deed) {
        switch (deed.what()) {
            case BEGAN -> {
                if (past.within(deed.at())) {
                    put(deed, began(deed));
                }
                shelves.remove(deed.key());
            }
            case ENDED -> {
                put(deed, deed.at());
                // Nothing was behind the shelf when it ended.
                Optional.ofNullable(shelves.get(deed.key()))
                        .filter(end -> !deed.at().isBefore(end))
                        .ifPresent(end -> shelves.remove(deed.key()));
            }
            case SHELVED -> shelves.put(deed.key(), deed.at().plus(deed.length()));
            case UNSHELVED -> shelves.put(deed.key(), deed.at());
            case KNOWN, ANSWERED, ANSWERED_WITH, RESET -> {}
        }
    }

    /** When the box said so: before the on-delay, and behind the shelf if there was one. */
    private Instant began(PastDeed deed) {
        Instant shown = Optional.ofNullable(shelves.get(deed.key()))
                .filter(end -> !deed.at().isBefore(end) && deed.at().isBefore(end.plus(MOMENT)))
                .map(end -> end.minusNanos(1))
                .orElse(deed.at());
        return shown.minus(
                setup.point(deed.key().site(), deed.key().point()).timing().onDelay());
    }

    private void put(PastDeed deed, Instant said) {
        var report = new Report(
                deed.key(),
                Optional.of(PastStage.box(deed.key().site())),
                deed.what() == PastDeed.What.BEGAN,
                Optional.ofNullable(past.priorities().get(deed.alarm())),
                Measured.NOTHING,
                said,
                false);
        agenda.computeIfAbsent(new When(said, deed.key().site(), Optional.empty()), any -> new ArrayList<>())
                .add(report);
    }

    /** Something that is no report. */
    void alone(Instant at, Stimulus stimulus) {
        agenda.put(new When(at, "", Optional.of(stimulus)), List.of());
    }

    /** Hands over what happens when, in order. */
    void each(BiConsumer<Instant, Stimulus> taker) {
        agenda.forEach((when, reports) -> taker.accept(
                when.at(), when.alone().orElseGet(() -> new Stimulus.Reported(PastStage.box(when.site()), reports))));
    }
}
