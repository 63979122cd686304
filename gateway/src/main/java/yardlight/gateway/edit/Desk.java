package yardlight.gateway.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import yardlight.db.setup.SetupVersion;
import yardlight.db.setup.SetupVersions;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.Opened;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/**
 * Changes pieces of the setup. Two people who change different pieces do not disturb each other; who changes a piece that
 * somebody else has changed since it was looked at is told what changed, and stores nothing.
 */
@Component
public class Desk {

    /** Somebody may store in between again and again; after so many tries it is told like any other change. */
    private static final int TRIES = 3;

    /** What decides who is called; points and boxes do not. */
    private static final Set<Part> CALLING = Set.of(Part.SITES, Part.CONTACTS, Part.ROSTERS, Part.LADDERS);

    private static final Pattern PLACE = Pattern.compile("#/(\\w+)/(\\d+)(?:/(.*))?");

    private final SetupVersions versions;
    private final SetupReader reader;
    private final Lane lane;
    private final Coverages coverages;
    private final AtomicReference<Look> last = new AtomicReference<>(new Look(0, SetupTree.EMPTY));

    Desk(SetupVersions versions, SetupReader reader, Lane lane, Coverages coverages) {
        this.versions = versions;
        this.reader = reader;
        this.lane = lane;
        this.coverages = coverages;
    }

    /**
     * The setup as it is looked at.
     *
     * @param version 0 when there is none yet
     */
    public record Look(int version, SetupTree tree) {}

    /** The setup that holds now. */
    public Look look() {
        Look now = versions.newest().map(this::known).orElse(new Look(0, SetupTree.EMPTY));
        last.set(now);
        return now;
    }

    /** A version never changes; to read it is most of the work of a page. */
    private Look known(SetupVersion stored) {
        Look read = last.get();
        return read.version() == stored.version() ? read : look(stored);
    }

    /** One that held once; what is not known (any more) counts as nothing at all. */
    public Look look(int version) {
        return versions.byVersion(version).map(Desk::look).orElse(new Look(version, SetupTree.EMPTY));
    }

    static Look look(SetupVersion stored) {
        Document document = SetupText.document(stored.document());
        return document.root() instanceof Node.Members root
                ? new Look(stored.version(), new SetupTree(root))
                : new Look(stored.version(), SetupTree.EMPTY);
    }

    /** What these wishes would make of the setup that holds now, and what would be wrong with it; stores nothing. */
    public Trial attempt(List<Piece> wishes) {
        return attempt(look(), wishes);
    }

    /**
     * A setup that is not stored.
     *
     * @param setup empty when something is wrong with it
     */
    public record Trial(Look base, SetupTree tree, Optional<Setup> setup, List<Saved.Mistake> mistakes) {}

    Trial attempt(Look base, List<Piece> wishes) {
        SetupTree tree = base.tree();
        for (Piece wish : wishes) {
            tree = tree.with(wish);
        }
        var faults = new Faults();
        Optional<Setup> setup = reader.read(new Document(tree.root(), List.of(), true), "#", faults);
        SetupTree made = tree;
        return new Trial(
                base,
                made,
                setup,
                faults.list().stream().map(fault -> mistake(made, fault)).toList());
    }

    /**
     * Stores these pieces as they are wanted, all of them or none.
     *
     * @param seen the version that was looked at
     * @param by login of the person
     */
    public Saved save(int seen, List<Piece> wishes, String by) {
        return save(seen, wishes, by, trial -> Optional.empty());
    }

    /**
     * The same, unless it opens a gap that the person has not agreed to.
     *
     * @param agreed the {@link Opened#sign} of the gaps that they were told of; empty when of none
     */
    public Saved save(int seen, List<Piece> wishes, String by, String agreed) {
        return save(
                seen,
                wishes,
                by,
                trial -> opens(trial).filter(opens -> !opens.gaps().sign().equals(agreed)));
    }

    /** The gaps that storing these pieces would open; empty when it opens none, or when something is wrong with them. */
    public Optional<Saved.Opens> opens(List<Piece> wishes) {
        return opens(attempt(wishes));
    }

    private Optional<Saved.Opens> opens(Trial trial) {
        boolean calling =
                trial.base().tree().changes(trial.tree()).stream().anyMatch(piece -> CALLING.contains(piece.part()));
        return trial.setup().filter(any -> calling).flatMap(setup -> {
            Setup before = attempt(trial.base(), List.of()).setup().orElse(Setup.EMPTY);
            Opened gaps = coverages.opened(before, setup);
            return gaps.nothing() ? Optional.empty() : Optional.of(new Saved.Opens(gaps, setup));
        });
    }

    private Saved save(int seen, List<Piece> wishes, String by, Function<Trial, Optional<Saved.Opens>> objection) {
        for (int i = 0; i < TRIES; i++) {
            Look now = look();
            Optional<Saved.Overtaken> overtaken = overtaken(seen, now, wishes);
            if (overtaken.isPresent()) {
                return overtaken.get();
            }
            Trial trial = attempt(now, wishes);
            if (trial.setup().isEmpty()) {
                return new Saved.Wrong(trial.mistakes());
            }
            Optional<Saved.Opens> opens = objection.apply(trial);
            if (opens.isPresent()) {
                return opens.get();
            }
            OptionalInt version = store(trial, by);
            if (version.isPresent()) {
                return new Saved.Stored(version.getAsInt());
            }
        }
        return overtaken(seen, look(), wishes, true).orElseThrow();
    }

    /** What storing this piece would change. */
    public Saved.Changed change(Piece wish) {
        return Saved.Changed.of(look().tree().piece(wish.part(), wish.key()), wish);
    }

    /**
     * What somebody else has changed of these pieces since this version was looked at; empty when nothing, so that saving
     * them would write over nothing.
     */
    public Optional<Saved.Overtaken> overtaken(int seen, List<Piece> wishes) {
        return overtaken(seen, look(), wishes);
    }

    private OptionalInt store(Trial trial, String by) {
        Answer answer = store(trial, new Stimulus.SetupChanged(trial.setup().orElseThrow(), by));
        return answer instanceof Answer.Refusal
                ? OptionalInt.empty()
                : OptionalInt.of(trial.base().version() + 1);
    }

    /** @return a refusal when another version holds by now, or when the rules forbid what the change is there for */
    Answer store(Trial trial, Stimulus.SetupChanged change) {
        int seen = trial.base().version();
        // Who hands in JSON finds JSON again.
        Format format = versions.byVersion(seen)
                .map(stored -> SetupText.format(stored.document()))
                .orElse(Format.YAML);
        String text = SetupText.of(format, trial.tree().root());
        return lane.setup(text, change, seen);
    }

    private Optional<Saved.Overtaken> overtaken(int seen, Look now, List<Piece> wishes) {
        return overtaken(seen, now, wishes, false);
    }

    private Optional<Saved.Overtaken> overtaken(int seen, Look now, List<Piece> wishes, boolean anyhow) {
        if (now.version() == seen && !anyhow) {
            return Optional.empty();
        }
        SetupTree then = look(seen).tree();
        var changes = new ArrayList<Saved.Changed>();
        for (Piece wish : wishes) {
            Piece before = then.piece(wish.part(), wish.key());
            Piece after = now.tree().piece(wish.part(), wish.key());
            if (!before.equals(after)) {
                changes.add(Saved.Changed.of(before, after));
            }
        }
        return changes.isEmpty() && !anyhow
                ? Optional.empty()
                : versions.newest()
                        .map(newest -> new Saved.Overtaken(newest.version(), newest.by(), newest.at(), changes));
    }

    private static Saved.Mistake mistake(SetupTree tree, Fault fault) {
        Matcher place = PLACE.matcher(fault.place());
        if (place.matches()) {
            for (Part part : Part.values()) {
                if (part.word().equals(place.group(1))) {
                    String field = Optional.ofNullable(place.group(3)).orElse("");
                    return new Saved.Mistake(tree.at(part, Integer.parseInt(place.group(2))), field, fault.rule());
                }
            }
        }
        return new Saved.Mistake(Optional.empty(), fault.place().replaceFirst("^#/?", ""), fault.rule());
    }
}
