package yardlight.gateway.turns;

import java.util.List;

/**
 * One roster as a calendar, in words.
 *
 * @param now who is on call, and until when
 * @param swaps that are not over yet
 * @param shares how nights and texts are shared
 * @param offers what others are asked to take
 * @param absent who is away while they have a turn, in the weeks to come
 */
record TurnsSheet(
        String id,
        String now,
        String zone,
        List<Week> weeks,
        List<Swap> swaps,
        List<Share> shares,
        List<OfferSheet> offers,
        List<String> absent) {

    /** What one person has of the nights and of the texts, behind and ahead. */
    record Share(String who, int had, int comes, long texts, long atNight) {}

    record Week(String name, List<Day> days) {}

    record Day(String name, boolean today, List<Part> parts) {}

    /**
     * A part of a day in which one person is on call.
     *
     * @param when {@code until 7:00 AM}; empty for the whole day
     * @param instead in whose place they stand; empty in their own turn
     * @param at local start of it, by which the swap is asked for
     * @param place of whoever has the turn in the order, from 0; -1 before the first turn
     */
    record Part(String who, String when, String instead, String at, int place) {}

    /** A swap in words, and as it stands in the setup. */
    record Swap(String words, String from, String to, String contact) {}
}
