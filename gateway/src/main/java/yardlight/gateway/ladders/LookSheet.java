package yardlight.gateway.ladders;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Hours;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * What a changed ladder changes for whom, before it is stored.
 *
 * @param title of the alarm that was rehearsed
 * @param people whom it calls and whom it called
 * @param differences of the ladder itself, in words
 * @param hours how long nobody would hear it within the week, then and now
 * @param notes the gaps that it would open; who saves from here has been told of them
 */
record LookSheet(
        LadderForm form,
        Ask ask,
        String title,
        List<Person> people,
        List<String> differences,
        String hours,
        Notes notes) {

    private static final String TOLD = "told";
    private static final String NEVER = "";

    /**
     * One of them.
     *
     * @param before when they were told first; empty when never
     * @param word what that means for them
     * @param changed whether it is another time
     */
    record Person(String name, String before, String after, String word, boolean changed) {}

    static LookSheet of(
            LadderForm form,
            Optional<Practice.Practised> stored,
            Practice.Practised wanted,
            Saved.Changed changed,
            Notes notes,
            Tongue tongue) {
        Practice.Played now = wanted.played().orElseThrow();
        Optional<Practice.Played> then = stored.flatMap(Practice.Practised::played);
        String hoursNow = unheard(now, tongue);
        String hours = then.map(played -> tongue.say("ladders.look.hours", unheard(played, tongue), hoursNow))
                .orElseGet(() -> tongue.say("ladders.look.hours.new", hoursNow));
        return new LookSheet(
                form,
                wanted.ask(),
                RehearsalSheet.of(wanted, Mistakes.NONE, tongue).title(),
                people(then, now, tongue),
                new Telling(tongue, now.setup(), true).differences(changed),
                hours,
                notes);
    }

    private static String unheard(Practice.Played played, Tongue tongue) {
        return played.unheard().isEmpty()
                ? tongue.say("ladders.look.never")
                : Telling.length(WeekSheet.total(played.unheard()));
    }

    private static List<Person> people(Optional<Practice.Played> then, Practice.Played now, Tongue tongue) {
        Map<String, Instant> before = then.map(LookSheet::first).orElse(Map.of());
        Map<String, Instant> after = first(now);
        var names = new Names(now.setup());
        var hours = new Hours(names.zone(now.question().key().site()), tongue.locale());
        Set<String> all = new LinkedHashSet<>(after.keySet());
        all.addAll(before.keySet());
        return all.stream()
                .map(contact -> {
                    Optional<Instant> was = Optional.ofNullable(before.get(contact));
                    Optional<Instant> is = Optional.ofNullable(after.get(contact));
                    String word = word(was, is);
                    return new Person(
                            names.contact(contact),
                            was.map(at -> RehearsalSheet.time(at, now, hours)).orElse(NEVER),
                            is.map(at -> RehearsalSheet.time(at, now, hours)).orElse(NEVER),
                            tongue.say("ladders.look." + word),
                            !was.equals(is));
                })
                .toList();
    }

    private static String word(Optional<Instant> was, Optional<Instant> is) {
        if (was.isEmpty()) {
            return "newly";
        }
        if (is.isEmpty()) {
            return "nomore";
        }
        int order = is.get().compareTo(was.get());
        return order == 0 ? "same" : order < 0 ? "earlier" : "later";
    }

    /** By contact, when they are told first. */
    private static Map<String, Instant> first(Practice.Played played) {
        var first = new LinkedHashMap<String, Instant>();
        played.lines().stream()
                .filter(line -> line.what().equals(TOLD))
                .forEach(line -> first.putIfAbsent(line.contact().orElse(""), line.at()));
        return first;
    }
}
