package yardlight.gateway.watch;

import java.util.List;
import java.util.Optional;

/** Whether this gateway does its work: the first thing that is wrong, if any is. */
final class Wellbeing implements Vital {

    private final List<Vital> vitals;

    Wellbeing(List<Vital> vitals) {
        this.vitals = List.copyOf(vitals);
    }

    @Override
    public Optional<String> trouble() {
        return vitals.stream().map(Wellbeing::asked).flatMap(Optional::stream).findFirst();
    }

    /** What cannot even be asked is not well; the words of the outside are left out, for they may hold anything. */
    private static Optional<String> asked(Vital vital) {
        try {
            return vital.trouble();
        } catch (RuntimeException e) {
            return Optional.of(vital.getClass().getSimpleName() + " cannot be looked at: "
                    + e.getClass().getSimpleName());
        }
    }
}
