package yardlight.gateway.turns;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import yardlight.db.alarm.Told;
import yardlight.escalation.roster.Nights;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.swap.SwapDay;

/**
 * How nights and texts are shared between those who have turns in a roster, over the weeks behind and ahead.
 *
 * @param texts what carriers took for anybody since the weeks behind began
 */
record Balance(List<Told.Text> texts, Instant now) {

    /** As many behind as ahead. */
    static final int WEEKS = 4;

    private static final Nights NIGHTS = new Nights(SwapDay.NIGHT_BEGINS, SwapDay.NIGHT_ENDS);

    /**
     * @param had nights of the last weeks
     * @param comes nights of the next weeks, this one included
     * @param texts whatever they were about
     * @param atNight those of them that came at night
     */
    record Share(String contact, int had, int comes, long texts, long atNight) {}

    /** In the order of their names in the setup, everybody who has a night or is in the order. */
    List<Share> of(Roster roster) {
        LocalDate today = LocalDate.ofInstant(now, roster.zone());
        Map<String, Integer> had = NIGHTS.count(roster, today.minusWeeks(WEEKS), today);
        Map<String, Integer> comes = NIGHTS.count(roster, today, today.plusWeeks(WEEKS));
        var people = new TreeSet<>(roster.order());
        people.addAll(had.keySet());
        people.addAll(comes.keySet());
        return people.stream()
                .map(one -> new Share(
                        one,
                        had.getOrDefault(one, 0),
                        comes.getOrDefault(one, 0),
                        texts.stream()
                                .filter(text -> text.contact().equals(one))
                                .count(),
                        texts.stream()
                                .filter(text -> text.contact().equals(one) && night(text.at(), roster.zone()))
                                .count()))
                .toList();
    }

    private static boolean night(Instant at, ZoneId zone) {
        LocalTime local = LocalTime.ofInstant(at, zone);
        return !local.isBefore(SwapDay.NIGHT_BEGINS) || local.isBefore(SwapDay.NIGHT_ENDS);
    }
}
