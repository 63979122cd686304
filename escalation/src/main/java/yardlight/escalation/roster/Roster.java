package yardlight.escalation.roster;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import yardlight.escalation.walltime.WallTime;

/**
 * Who is on call by turns. Tours follow each other without a gap from the start on, in the given order, for ever;
 * before the start nobody is on call, unless a relief says so.
 *
 * <p>Tours are counted on the clock on the wall: a handover at 07:00 stays at 07:00 through a change of the clock, so
 * that tour is an hour shorter or longer. A handover at a time that the night of the change leaves out takes place at
 * the first moment after it (a skipped handover would leave nobody on call); at a time that comes twice, the first time.
 *
 * @param tour length of a turn, in local time, positive
 * @param order contacts, or {@code roster:} and the id of another roster that has this turn
 * @param reliefs swaps; where two overlap the later one in the list holds
 */
public record Roster(
        String id, ZoneId zone, LocalDateTime start, Duration tour, List<String> order, List<Relief> reliefs) {

    public Roster {
        order = List.copyOf(order);
        reliefs = List.copyOf(reliefs);
        if (tour.isNegative() || tour.isZero()) {
            throw new IllegalArgumentException("tour must be positive: " + tour);
        }
        if (order.isEmpty()) {
            throw new IllegalArgumentException("roster must have at least one contact in its order: " + id);
        }
    }

    /** The same roster with one more swap, which holds over those before it. */
    public Roster with(Relief relief) {
        return new Roster(
                id,
                zone,
                start,
                tour,
                order,
                Stream.concat(reliefs.stream(), Stream.of(relief)).toList());
    }

    /** Who is on call at the instant, as written in the roster; empty when nobody is yet. */
    public Optional<String> onCall(Instant instant) {
        return relief(instant).map(Relief::contact).or(() -> tour(instant));
    }

    private Optional<Relief> relief(Instant instant) {
        for (int i = reliefs.size() - 1; i >= 0; i--) {
            Relief relief = reliefs.get(i);
            if (!instant.isBefore(handover(relief.from())) && instant.isBefore(handover(relief.to()))) {
                return Optional.of(relief);
            }
        }
        return Optional.empty();
    }

    private Optional<String> tour(Instant instant) {
        long turn = turn(instant);
        return turn < 0 ? Optional.empty() : Optional.of(order.get((int) (turn % order.size())));
    }

    /** The tour that an instant is in, whoever stands in for it; empty before the first one. */
    public Optional<Stretch> tourAt(Instant instant) {
        long turn = turn(instant);
        return turn < 0
                ? Optional.empty()
                : Optional.of(new Stretch(turnStart(turn), turnStart(turn + 1), tour(instant), Optional.empty()));
    }

    /**
     * Who is on call from one instant to another, in order and without a gap. A stretch ends at each handover, and where a
     * relief begins or ends.
     *
     * @param from inclusive
     * @param to exclusive, after from
     */
    public List<Stretch> stretches(Instant from, Instant to) {
        var cuts = new TreeSet<Instant>();
        for (Instant cut = nextHandover(from); cut.isBefore(to); cut = nextHandover(cut)) {
            cuts.add(cut);
        }
        reliefs.stream()
                .flatMap(relief -> Stream.of(handover(relief.from()), handover(relief.to())))
                .filter(cut -> cut.isAfter(from) && cut.isBefore(to))
                .forEach(cuts::add);
        cuts.add(to);
        var stretches = new ArrayList<Stretch>();
        Instant start = from;
        for (Instant end : cuts) {
            stretches.add(new Stretch(start, end, tour(start), relief(start)));
            start = end;
        }
        return List.copyOf(stretches);
    }

    /** The start of the first tour that begins after the instant. Reliefs are not handovers of a tour. */
    public Instant nextHandover(Instant instant) {
        return turnStart(turn(instant) + 1);
    }

    /** Every instant after {@code from} and before {@code to} at which what {@link #onCall} says can change. */
    public Stream<Instant> changes(Instant from, Instant to) {
        Stream<Instant> swaps =
                reliefs.stream().flatMap(relief -> Stream.of(handover(relief.from()), handover(relief.to())));
        Stream<Instant> handovers = Stream.iterate(nextHandover(from), to::isAfter, this::nextHandover);
        return Stream.concat(swaps, handovers).filter(change -> change.isAfter(from) && change.isBefore(to));
    }

    private long turn(Instant instant) {
        if (instant.isBefore(turnStart(0))) {
            return -1;
        }
        LocalDateTime local = instant.atZone(zone).toLocalDateTime();
        long guess = Math.max(0, Duration.between(start, local).dividedBy(tour) - 1);
        while (!instant.isBefore(turnStart(guess + 1))) {
            guess++;
        }
        return guess;
    }

    private Instant turnStart(long turn) {
        return handover(start.plus(tour.multipliedBy(turn)));
    }

    private Instant handover(LocalDateTime local) {
        return WallTime.instant(local, zone);
    }
}
