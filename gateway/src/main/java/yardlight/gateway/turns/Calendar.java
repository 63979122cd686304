package yardlight.gateway.turns;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.roster.Stretch;
import yardlight.escalation.setup.Away;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.walltime.WallTime;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Lays a roster out in weeks, in words. */
record Calendar(Roster roster, Names names, Tongue tongue, Instant now) {

    static final int WEEKS = 4;
    private static final int DAYS = 7;

    /** @param from a day of the first week; the one that it is when there is none */
    TurnsSheet of(Optional<LocalDate> from, Balance balance, List<Offer> offers) {
        LocalDate monday = from.orElseGet(() -> LocalDate.ofInstant(now, roster.zone()))
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new TurnsSheet(
                roster.id(),
                onCall(),
                roster.zone().getId(),
                IntStream.range(0, WEEKS)
                        .mapToObj(week -> week(monday.plusWeeks(week)))
                        .toList(),
                roster.reliefs().stream()
                        .filter(relief ->
                                WallTime.instant(relief.to(), roster.zone()).isAfter(now))
                        .map(this::swap)
                        .toList(),
                balance.of(roster).stream().map(this::share).toList(),
                offers.stream()
                        .filter(offer -> offer.roster().equals(roster.id()))
                        .map(offer -> OfferSheet.of(offer, this))
                        .toList(),
                absent());
    }

    private String onCall() {
        Optional<String> who = roster.onCall(now);
        String next = clock().readWithDay(roster.nextHandover(now));
        return who.map(name -> tongue.say("turns.now", name(name), next))
                .orElseGet(() -> tongue.say("turns.nobody", next));
    }

    private TurnsSheet.Week week(LocalDate monday) {
        return new TurnsSheet.Week(
                tongue.say("turns.week", clock().read(monday)),
                IntStream.range(0, DAYS)
                        .mapToObj(day -> day(monday.plusDays(day)))
                        .toList());
    }

    private TurnsSheet.Day day(LocalDate day) {
        Instant start = day.atStartOfDay(roster.zone()).toInstant();
        Instant end = day.plusDays(1).atStartOfDay(roster.zone()).toInstant();
        return new TurnsSheet.Day(
                clock().readInWeek(day),
                day.equals(LocalDate.ofInstant(now, roster.zone())),
                roster.stretches(start, end).stream()
                        .map(stretch -> part(stretch, start, end))
                        .toList());
    }

    private TurnsSheet.Part part(Stretch stretch, Instant start, Instant end) {
        boolean begins = !stretch.from().equals(start);
        boolean ends = !stretch.to().equals(end);
        String from = clock().time(stretch.from());
        String to = clock().time(stretch.to());
        String when = begins && ends
                ? tongue.say("turns.between", from, to)
                : begins ? tongue.say("turns.from", from) : ends ? tongue.say("turns.until", to) : "";
        return new TurnsSheet.Part(
                stretch.onCall().map(this::name).orElseGet(() -> tongue.say("turns.noone")),
                when,
                stretch.relief().isEmpty()
                        ? ""
                        : stretch.tour()
                                .map(who -> tongue.say("turns.instead", name(who)))
                                .orElse(""),
                local(stretch.from()).toString(),
                stretch.tour().map(roster.order()::indexOf).orElse(-1));
    }

    private TurnsSheet.Swap swap(Relief relief) {
        Instant from = WallTime.instant(relief.from(), roster.zone());
        Instant to = WallTime.instant(relief.to(), roster.zone());
        return new TurnsSheet.Swap(
                tongue.say(
                        "turns.swap.words", name(relief.contact()), clock().readWithDay(from), clock().readWithDay(to)),
                relief.from().toString(),
                relief.to().toString(),
                relief.contact());
    }

    /** Nobody is taken off for being away; so it is said while there is time to swap. */
    private List<String> absent() {
        Instant far = now.plus(Duration.ofDays(7L * WEEKS));
        return roster.stretches(now, far).stream()
                .flatMap(stretch -> stretch.onCall().map(names.setup().contacts()::get).stream()
                        .flatMap(contact -> contact.away(stretch.from(), stretch.to()).stream()
                                .map(away -> absent(contact, away))))
                .distinct()
                .toList();
    }

    private String absent(Contact contact, Away away) {
        return tongue.say(
                "turns.absent",
                contact.name(),
                clock().readWithDay(WallTime.instant(away.from(), contact.zone())),
                clock().readWithDay(WallTime.instant(away.to(), contact.zone())));
    }

    private TurnsSheet.Share share(Balance.Share one) {
        return new TurnsSheet.Share(name(one.contact()), one.had(), one.comes(), one.texts(), one.atNight());
    }

    /** Another roster in this one's order goes by its id. */
    String name(String call) {
        return call.startsWith(Rung.ROSTER)
                ? tongue.say("turns.roster", call.substring(Rung.ROSTER.length()))
                : names.contact(call);
    }

    Clockface clock() {
        return new Clockface(roster.zone(), now, tongue.locale());
    }

    private LocalDateTime local(Instant instant) {
        return LocalDateTime.ofInstant(instant, roster.zone()).truncatedTo(ChronoUnit.MINUTES);
    }
}
