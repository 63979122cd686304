package yardlight.gateway.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import yardlight.gateway.coverage.GapWords;
import yardlight.gateway.coverage.Opened;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/**
 * What became of an edit that did not hold, in words beside the form.
 *
 * @param wrong by the field, {@code lines/0/address}, what would be right
 * @param whole what is wrong elsewhere in the setup
 * @param other who has changed the same thing meanwhile; empty when nobody has
 * @param changes what they changed
 * @param opens the gaps that it would open
 * @param sign stands for these gaps; handed in with the form it says that somebody has read of them
 */
public record Notes(
        Map<String, String> wrong,
        List<String> whole,
        String other,
        List<Change> changes,
        List<String> opens,
        String sign) {

    /** So many sites with a new gap are named. */
    private static final int MOST_SITES = 8;

    public static final Notes NONE = new Notes(Map.of(), List.of(), "", List.of());

    /** What somebody else changed. */
    public record Change(String field, String before, String after) {}

    /** It opens no gap. */
    public Notes(Map<String, String> wrong, List<String> whole, String other, List<Change> changes) {
        this(wrong, whole, other, changes, List.of(), "");
    }

    /** What it opens. */
    public static Notes of(Saved.Opens saved, Tongue tongue) {
        Opened gaps = saved.gaps();
        var words = new ArrayList<>(new GapWords(tongue, saved.setup(), gaps.from()).opened(gaps, MOST_SITES));
        int more = gaps.sites().size() - words.size();
        if (more > 0) {
            words.add(tongue.say("coverage.opens.more", more));
        }
        return new Notes(Map.of(), List.of(), "", List.of(), List.copyOf(words), gaps.sign());
    }

    /** @return empty text where nothing is wrong */
    public String at(String field) {
        return wrong.getOrDefault(field, "");
    }

    /**
     * Beside the fields of one piece.
     *
     * @param words the beginning of the keys in the lists of words: {@code people} for {@code people.wrong.zone} and
     *     {@code people.field.zone}
     */
    public static Notes of(Saved.Wrong wrong, Piece piece, Tongue tongue, String words) {
        var fields = new HashMap<String, String>();
        var whole = new ArrayList<String>();
        for (Saved.Mistake mistake : wrong.mistakes()) {
            boolean here = mistake.piece().filter(piece::same).isPresent();
            String rule = said(tongue, words + ".wrong." + plain(mistake.field()), tongue.say(mistake.rule()));
            if (here && !mistake.field().isEmpty()) {
                fields.putIfAbsent(mistake.field(), rule);
            } else {
                whole.add(mistake.piece().map(other -> other.key() + ": ").orElse("") + tongue.say(mistake.rule()));
            }
        }
        return new Notes(Map.copyOf(fields), List.copyOf(whole), "", List.of());
    }

    /** What the other one changed. */
    public static Notes of(Saved.Overtaken overtaken, Names names, Clockface clock, Tongue tongue, String words) {
        List<Change> changes = overtaken.changes().stream()
                .flatMap(changed -> changed.differences().stream().map(one -> change(changed, one, tongue, words)))
                .toList();
        return new Notes(
                Map.of(),
                List.of(),
                tongue.say("notes.overtaken", names.contact(overtaken.by()), clock.read(overtaken.at())),
                changes);
    }

    private static Change change(Saved.Changed changed, Difference one, Tongue tongue, String words) {
        String field = one.field().isEmpty()
                ? changed.key()
                : Stream.of(one.field().split("/"))
                        .map(part -> said(tongue, words + ".field." + part, part))
                        .reduce((before, after) -> before + " " + after)
                        .orElse("");
        return new Change(field, one.before(), one.after());
    }

    /** Places in lists do not matter to the words: {@code lines/0/address} is {@code lines.address}. */
    private static String plain(String field) {
        return field.replaceAll("/\\d+", "").replace('/', '.');
    }

    private static String said(Tongue tongue, String key, String otherwise) {
        return tongue.words().getMessage(key, null, otherwise, tongue.locale());
    }
}
