package yardlight.escalation;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.heartbeat.Inquiry;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Witness;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;

/** What comes to light while boxes are silent, and when they are back. */
final class Returns {

    /** A modem takes its time to find its network. Common practice, no source. */
    private static final Duration TO_START = Duration.ofMinutes(3);

    private final Draft draft;
    private final Reports reports;
    private final Verdicts verdicts;

    Returns(Draft draft, Reports reports, Verdicts verdicts) {
        this.draft = draft;
        this.reports = reports;
        this.verdicts = verdicts;
    }

    /** A living box says that a feed is off: those of its site that hang on it and are silent may be so because of that. */
    void feedOff(Box teller, String feed) {
        for (Box box : draft.setup().boxesAt(teller.site())) {
            boolean hangsOnIt =
                    box.feed().equals(Optional.of(feed)) && !box.id().equals(teller.id());
            draft.box(box.id())
                    .filter(watch -> hangsOnIt && watch.silent())
                    .flatMap(BoxWatch::absence)
                    .flatMap(draft::absence)
                    .filter(Absence::open)
                    .ifPresent(absence -> {
                        var said = new Evidence(Clue.FEED_OFF_ELSEWHERE, draft.now(), teller.id());
                        verdicts.change(absence, absence.judgement().with(List.of(said)), said.words());
                    });
        }
    }

    /** A feed is back: boxes that went with it have some minutes to start before anybody is called about them. */
    void feedBack(Box teller, String feed) {
        for (Box box : draft.setup().boxesAt(teller.site())) {
            draft.box(box.id())
                    .filter(BoxWatch::silent)
                    .filter(watch -> box.feed().equals(Optional.of(feed)))
                    .ifPresent(watch ->
                            draft.put(watch.with(Optional.of(draft.now().plus(TO_START)))));
        }
    }

    /** It had its minutes, and is still not heard. */
    void notStarted(Box box, BoxWatch watch) {
        draft.put(watch.with(Optional.empty()));
        reports.resume(BoxAlarms.silence(box.site()), false);
        watch.absence()
                .flatMap(draft::absence)
                .map(Absence::key)
                .filter(key -> !key.equals(BoxAlarms.silence(box.site())))
                .ifPresent(key -> reports.resume(key, false));
    }

    /** A sign of life of a box that was silent, or the first after that with which it tells its uptime. */
    void back(Box box, BoxWatch before, Heartbeat said) {
        Optional<Absence> known = before.absence()
                .flatMap(draft::absence)
                .filter(absence -> absence.members().containsKey(box.id()));
        if (known.isEmpty()) {
            // Nearly every sign of life ends here: nothing else is looked up for it.
            if (before.silent()) {
                unknown(box);
            }
            return;
        }
        Absence absence = known.get();
        var witness = new Witness(box, draft.box(box.id()).orElseThrow());
        Absence after = absence.open() && before.silent() ? absence.back(box.id(), draft.now()) : absence;
        draft.put(after);
        Inquiry.back(witness, said, absence.members().get(box.id()).since(), draft.now())
                .ifPresent(found -> verdicts.change(after, after.judgement().with(List.of(found)), found.words()));
        over(absence, after, box);
    }

    /** A silence that was found before silences were kept ends with the last box of its site. */
    private void unknown(Box box) {
        boolean others = draft.setup().boxesAt(box.site()).stream()
                .anyMatch(
                        other -> draft.box(other.id()).filter(BoxWatch::silent).isPresent());
        if (!others) {
            verdicts.end(BoxAlarms.silence(box.site()), box);
            reports.finish(box.site());
        }
    }

    /** A box is gone from the setup, and so is its silence. */
    void gone(Box box, BoxWatch before) {
        before.absence()
                .flatMap(draft::absence)
                .filter(Absence::open)
                .filter(absence -> absence.members().containsKey(box.id()))
                .ifPresent(absence -> {
                    Absence after = absence.back(box.id(), draft.now());
                    draft.put(after);
                    over(absence, after, box);
                });
    }

    /**
     * Another setup. An alarm whose site is gone, or is worked on from now on, speaks for no other site: those that are still
     * silent are found so anew, at once, at their own.
     */
    void setup() {
        draft.setup().boxes().values().stream()
                .filter(box -> path(box).isPresent())
                .collect(Collectors.groupingBy(box -> path(box).orElseThrow(), LinkedHashMap::new, Collectors.toList()))
                .forEach(this::setup);
    }

    /** Most silences are of one site, and there can be thousands: such a one leaves nobody behind. */
    private void setup(Path path, List<Box> silent) {
        if (silent.stream().anyMatch(box -> !path.equals(Path.site(box.site())))) {
            draft.absence(path)
                    .filter(absence -> absence.open() && stranded(absence.key(), silent))
                    .ifPresent(absence -> dissolve(absence, silent));
        }
    }

    private Optional<Path> path(Box box) {
        return draft.box(box.id()).filter(BoxWatch::silent).flatMap(BoxWatch::absence);
    }

    private boolean stranded(AlarmKey key, List<Box> silent) {
        Setup setup = draft.setup();
        boolean speaks = setup.site(key.site()).isPresent()
                && setup.point(key.site(), key.point()).inService();
        return !speaks && silent.stream().anyMatch(box -> !box.site().equals(key.site()));
    }

    private void dissolve(Absence absence, List<Box> silent) {
        // Kept from people first, so that nobody hears that it is over.
        reports.resume(absence.key(), false);
        draft.put(absence.ended(draft.now()));
        silent.forEach(box -> draft.box(box.id()).ifPresent(watch -> draft.put(watch.dueAgain(draft.now()))));
        verdicts.end(absence.key(), silent.get(0));
        reports.resume(absence.key(), false);
    }

    private void over(Absence before, Absence after, Box box) {
        if (before.open() && !after.open()) {
            verdicts.end(after.key(), box);
            reports.resume(after.key(), false);
        }
    }
}
