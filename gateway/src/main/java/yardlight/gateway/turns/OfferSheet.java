package yardlight.gateway.turns;

import java.util.List;
import java.util.stream.Collectors;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.walltime.WallTime;

/**
 * A turn that others are asked to take, in words.
 *
 * @param words who asks for what, and until when
 * @param answers who said no so far; empty when nobody has
 * @param asked by whom it can be taken
 */
record OfferSheet(String id, String words, String answers, List<Person> asked) {

    record Person(String id, String name) {}

    static OfferSheet of(Offer offer, Calendar calendar) {
        Roster roster = calendar.roster();
        List<Person> asked = offer.asked().stream()
                .map(one -> new Person(one, calendar.name(one)))
                .toList();
        return new OfferSheet(
                offer.id(),
                calendar.tongue()
                        .say(
                                "turns.asked.words",
                                calendar.name(offer.by()),
                                calendar.clock().readWithDay(WallTime.instant(offer.from(), roster.zone())),
                                calendar.clock().readWithDay(WallTime.instant(offer.to(), roster.zone())),
                                Integer.toString(offer.code()),
                                calendar.clock().readWithDay(offer.expiresAt())),
                offer.declined().isEmpty()
                        ? ""
                        : calendar.tongue()
                                .say(
                                        "turns.asked.no",
                                        offer.declined().stream()
                                                .map(calendar::name)
                                                .collect(Collectors.joining(", "))),
                asked);
    }
}
