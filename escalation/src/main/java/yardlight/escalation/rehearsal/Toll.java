package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import yardlight.escalation.performance.Burden;

/**
 * What a season took from people, in numbers; night and wakings as {@link Burden} has them.
 *
 * @param texts calls by whatever path but mail
 * @param mails the same by mail: they wake nobody
 * @param atNight texts from 22:00 to 06:00 where the person is
 * @param alarms that called people
 * @param unanswered those that nobody answered
 * @param longest from an alarm to its first answer; empty when nobody answered any
 * @param median of the same (nearest rank)
 * @param people by contact
 */
public record Toll(
        int texts,
        int mails,
        int atNight,
        int wakings,
        int alarms,
        int unanswered,
        Optional<Duration> longest,
        Optional<Duration> median,
        List<Person> people) {

    /** What it took from one of them. */
    public record Person(String contact, int texts, int mails, int atNight, int wakings) {}

    public Toll {
        people = List.copyOf(people);
    }

    /** @param zone of a contact, by which it is night */
    public static Toll of(Season season, Function<String, ZoneId> zone) {
        Map<String, List<PastText>> byContact = new TreeMap<>();
        season.texts()
                .forEach(text -> byContact
                        .computeIfAbsent(text.contact(), any -> new ArrayList<>())
                        .add(text));
        List<Person> people = byContact.entrySet().stream()
                .map(one -> person(one.getKey(), one.getValue(), zone.apply(one.getKey())))
                .toList();
        List<PastCall> calls = season.calling();
        List<Duration> waits =
                calls.stream().flatMap(call -> call.waited().stream()).sorted().toList();
        return new Toll(
                people.stream().mapToInt(Person::texts).sum(),
                people.stream().mapToInt(Person::mails).sum(),
                people.stream().mapToInt(Person::atNight).sum(),
                people.stream().mapToInt(Person::wakings).sum(),
                calls.size(),
                calls.size() - waits.size(),
                waits.isEmpty() ? Optional.empty() : Optional.of(waits.get(waits.size() - 1)),
                waits.isEmpty() ? Optional.empty() : Optional.of(waits.get((waits.size() - 1) / 2)),
                people);
    }

    private static Person person(String contact, List<PastText> all, ZoneId zone) {
        List<Instant> texts =
                all.stream().filter(text -> !text.mail()).map(PastText::at).toList();
        return new Person(
                contact,
                texts.size(),
                all.size() - texts.size(),
                (int) texts.stream().filter(at -> Burden.night(at, zone)).count(),
                Burden.wakings(texts, zone));
    }
}
