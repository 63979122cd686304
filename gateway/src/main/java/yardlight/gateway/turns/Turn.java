package yardlight.gateway.turns;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.roster.Stretch;
import yardlight.escalation.walltime.WallTime;

/**
 * A turn that somebody wants to swap, in words.
 *
 * @param words who has it and how long; empty before the first turn
 * @param from local, as the setup writes it
 * @param to the same
 * @param who has it
 * @param days of it, when it is longer than one
 * @param next who comes after in the order: the first that comes to mind for standing in
 */
record Turn(String words, String from, String to, String who, List<Day> days, String next) {

    /** More than these nobody picks one by one. */
    private static final int MOST_DAYS = 31;

    /** A day of a turn, from one time of handover to the next. */
    record Day(LocalDate date, String words, LocalDateTime from, LocalDateTime to) {}

    /** The turn at a local time; the one that it is now when there is none. */
    static Turn at(Calendar calendar, Optional<LocalDateTime> at) {
        Roster roster = calendar.roster();
        Instant instant =
                at.map(local -> WallTime.instant(local, roster.zone())).orElse(calendar.now());
        Optional<Stretch> tour = roster.tourAt(instant);
        LocalDateTime from = tour.map(one -> local(one.from(), roster)).orElseGet(() -> at.orElse(roster.start()));
        LocalDateTime to = tour.map(one -> local(one.to(), roster)).orElseGet(roster::start);
        String who = tour.flatMap(Stretch::tour).orElse("");
        return new Turn(
                tour.map(one -> calendar.tongue()
                                .say(
                                        "turns.has",
                                        calendar.name(who),
                                        calendar.clock().readWithDay(one.from()),
                                        calendar.clock().readWithDay(one.to())))
                        .orElse(""),
                from.toString(),
                to.toString(),
                who,
                days(from, to, calendar),
                next(roster, who));
    }

    private static List<Day> days(LocalDateTime from, LocalDateTime to, Calendar calendar) {
        var days = new ArrayList<Day>();
        LocalTime handover = from.toLocalTime();
        LocalDateTime start = from;
        while (start.isBefore(to) && days.size() < MOST_DAYS) {
            LocalDateTime next = start.toLocalDate().plusDays(1).atTime(handover);
            LocalDateTime end = next.isBefore(to) ? next : to;
            days.add(new Day(start.toLocalDate(), calendar.clock().readInWeek(start.toLocalDate()), start, end));
            start = end;
        }
        return days.size() > 1 ? List.copyOf(days) : List.of();
    }

    private static String next(Roster roster, String who) {
        int place = roster.order().indexOf(who);
        return roster.order().get((place + 1) % roster.order().size());
    }

    private static LocalDateTime local(Instant instant, Roster roster) {
        return LocalDateTime.ofInstant(instant, roster.zone()).truncatedTo(ChronoUnit.MINUTES);
    }

    /** A form for the whole of it, or for one day. */
    SwapForm form(int seen, Optional<LocalDate> day) {
        Optional<Day> one = day.flatMap(wanted ->
                days.stream().filter(known -> known.date().equals(wanted)).findFirst());
        return new SwapForm(
                seen,
                one.map(known -> known.from().toString()).orElse(from),
                one.map(known -> known.to().toString()).orElse(to),
                next);
    }
}
