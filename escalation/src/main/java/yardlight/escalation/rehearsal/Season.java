package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a time was like for people: as it was, or as it would have been.
 *
 * @param texts those that went out in it, oldest first
 * @param calls the alarms that called people in it, oldest first; as it would have been, those that would call nobody too
 */
public record Season(List<PastText> texts, List<PastCall> calls) {

    /** Of texts: by time, then by contact and sites. */
    static final Comparator<PastText> IN_ORDER = Comparator.comparing(PastText::at)
            .thenComparing(PastText::contact)
            .thenComparing(text -> String.join(" ", text.sites()));

    public Season {
        texts = List.copyOf(texts);
        calls = List.copyOf(calls);
    }

    /** As it really was. */
    public static Season really(Past past) {
        List<PastText> texts = past.texts().stream()
                .filter(text -> past.within(text.at()))
                .sorted(IN_ORDER)
                .toList();
        return new Season(texts, Stretch.of(past).stream().map(Season::really).toList());
    }

    private static PastCall really(Stretch one) {
        PastCall begun = PastCall.begun(one, true);
        PastCall told = one.first().map(begun::told).orElse(begun);
        return one.deed().map(deed -> told.answered(deed.by(), deed.at())).orElse(told);
    }

    /** As much of it as began or went out within a time; the end does not belong to it. */
    public Season within(Instant from, Instant to) {
        return new Season(
                texts.stream().filter(text -> in(text.at(), from, to)).toList(),
                calls.stream().filter(call -> in(call.at(), from, to)).toList());
    }

    /** Those that call somebody. */
    public List<PastCall> calling() {
        return calls.stream().filter(PastCall::calls).toList();
    }

    private static boolean in(Instant at, Instant from, Instant to) {
        return !at.isBefore(from) && at.isBefore(to);
    }

    /** What happened to people, in order: {@code told}, {@code answered}, and {@code unanswered} for what stayed so. */
    public List<Rehearsal.Line> lines() {
        var lines = new ArrayList<Rehearsal.Line>();
        texts.forEach(text -> lines.add(new Rehearsal.Line(
                text.at(),
                "told",
                Optional.of(text.contact()),
                Optional.of(text.channel()),
                String.join(", ", text.sites()))));
        calling()
                .forEach(call -> lines.add(call.answeredAt()
                        .map(at -> new Rehearsal.Line(at, "answered", call.by(), Optional.empty(), alarm(call)))
                        .orElseGet(() -> new Rehearsal.Line(
                                call.at(), "unanswered", Optional.empty(), Optional.empty(), alarm(call)))));
        // Stable: a text comes before the answer of the same moment.
        lines.sort(Comparator.comparing(Rehearsal.Line::at));
        return List.copyOf(lines);
    }

    private static String alarm(PastCall call) {
        return call.key().site() + "/" + call.key().local();
    }
}
