package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;

/** Which alarms are kept from people: their point is out of service, or another alarm of the site explains them. */
final class Withholding {

    /** Of a silence of several sites and more boxes people are told in any case: to look at all at every turn costs too much. */
    private static final int MOST = 100;

    private final Draft draft;

    Withholding(Draft draft) {
        this.draft = draft;
    }

    /** The move that the alarm has to make now; empty when it stands as it should. */
    Optional<AlarmTrigger> trigger(Alarm alarm, Point point) {
        boolean explained = point.suppressedWhile().stream()
                                .anyMatch(other -> active(alarm.key().site(), other))
                        && !concernsOthers(alarm)
                || wentWithItsFeed(alarm);
        return switch (alarm.state()) {
            case OUT_OF_SERVICE -> point.inService() ? Optional.of(AlarmTrigger.RESTORE) : Optional.empty();
            case SUPPRESSED_BY_DESIGN ->
                !point.inService()
                        ? Optional.of(AlarmTrigger.REMOVE)
                        : explained ? Optional.empty() : Optional.of(AlarmTrigger.UNSUPPRESS);
            case SHELVED -> point.inService() ? Optional.empty() : Optional.of(AlarmTrigger.REMOVE);
            case NORMAL,
                    UNACKNOWLEDGED,
                    ACKNOWLEDGED,
                    RETURNED_UNACKNOWLEDGED,
                    LATCHED_UNACKNOWLEDGED,
                    LATCHED_ACKNOWLEDGED ->
                !point.inService()
                        ? Optional.of(AlarmTrigger.REMOVE)
                        : explained ? Optional.of(AlarmTrigger.SUPPRESS) : Optional.empty();
        };
    }

    /** Whether boxes of other sites are silent in it: what explains it at its own site says nothing of those. */
    private boolean concernsOthers(Alarm alarm) {
        return new Silences(draft)
                .behind(alarm.key())
                .filter(Absence::open)
                .filter(silence -> silentIn(silence).stream()
                        .anyMatch(box -> !box.site().equals(alarm.key().site())))
                .isPresent();
    }

    /** Whether the boxes are silent because their feed is off, which is an alarm already: one cause, one callout. */
    private boolean wentWithItsFeed(Alarm alarm) {
        boolean power = alarm.condition().equals(Verdict.POWER_OFF.condition());
        if (!power || !BoxAlarms.isSilence(alarm.key())) {
            return false;
        }
        String site = alarm.key().site();
        Optional<Absence> silence = new Silences(draft).behind(alarm.key()).filter(Absence::open);
        boolean own = alarm.key().equals(BoxAlarms.silence(site))
                && silence.filter(one -> !one.shared().equals(Path.site(site))).isEmpty();
        List<Box> silent = own ? silentAt(site) : silence.map(this::silentIn).orElse(List.of());
        // Once they are back it is withheld until it has returned, so that nobody is called in between.
        boolean ending = alarm.active() && alarm.state() == AlarmState.SUPPRESSED_BY_DESIGN && silence.isEmpty();
        return silent.isEmpty()
                ? ending
                : (own || silent.size() <= MOST)
                        && silent.stream().allMatch(box -> (feedOff(box) || starting(box)) && (!own || alone(box)));
    }

    private List<Box> silentAt(String site) {
        return draft.setup().boxesAt(site).stream().filter(this::silent).toList();
    }

    /** Those of several sites: each of them has its own alarm about the feed, or one of them is news. */
    private List<Box> silentIn(Absence silence) {
        return silence.members().entrySet().stream()
                .filter(member -> member.getValue().back().isEmpty())
                .flatMap(member -> Optional.ofNullable(draft.setup().boxes().get(member.getKey())).stream())
                .filter(this::silent)
                .toList();
    }

    private boolean silent(Box box) {
        return draft.box(box.id()).filter(BoxWatch::silent).isPresent();
    }

    private boolean feedOff(Box box) {
        return box.feed()
                .filter(BoxAlarms::canBeOff)
                .filter(feed ->
                        active(box.site(), BoxAlarms.feedOff(box.site(), feed).local()))
                .isPresent();
    }

    /** Its feed is back, and it has some minutes to start. */
    private boolean starting(Box box) {
        return draft.box(box.id()).flatMap(BoxWatch::deadline).isPresent();
    }

    /** Whether its silence is about no other site. */
    private boolean alone(Box box) {
        Path site = Path.site(box.site());
        return draft.box(box.id())
                        .flatMap(BoxWatch::absence)
                        .filter(site::equals)
                        .isPresent()
                && draft.absence(site)
                        .filter(Absence::open)
                        .filter(absence -> !absence.shared().equals(site))
                        .isEmpty();
    }

    private boolean active(String site, String local) {
        AlarmKey key = AlarmKey.at(site, local);
        Alarm other = draft.alarm(BoxAlarms.kept(key));
        // What is itself explained, or being worked on, explains nothing.
        return other.active()
                && other.condition().equals(key.condition())
                && other.state() != AlarmState.SUPPRESSED_BY_DESIGN
                && other.state() != AlarmState.OUT_OF_SERVICE;
    }
}
