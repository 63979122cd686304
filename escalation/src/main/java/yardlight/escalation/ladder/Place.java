package yardlight.escalation.ladder;

import java.util.Optional;

/**
 * A place on a ladder.
 *
 * @param climb 0 for the first climb of the whole ladder
 * @param rung index of the rung
 * @param round 0 for the first time that the rung is called
 */
public record Place(int climb, int rung, int round) {

    public static final Place FOOT = new Place(0, 0, 0);

    public Place {
        if (climb < 0 || rung < 0 || round < 0) {
            throw new IllegalArgumentException(
                    "place must not be below the foot: " + climb + ", " + rung + ", " + round);
        }
    }

    /** The place after this one, or empty at the end of the last climb. */
    public Optional<Place> next(Ladder ladder) {
        boolean moreRounds = rung < ladder.rungs().size()
                && round + 1 < ladder.rungs().get(rung).rounds();
        return moreRounds ? Optional.of(new Place(climb, rung, round + 1)) : nextRung(ladder);
    }

    /** The first round of the rung after this one, whatever rounds are left here. */
    public Optional<Place> nextRung(Ladder ladder) {
        if (rung + 1 < ladder.rungs().size()) {
            return Optional.of(new Place(climb, rung + 1, 0));
        }
        return climb < ladder.again() ? Optional.of(new Place(climb + 1, 0, 0)) : Optional.empty();
    }
}
