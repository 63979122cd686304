package yardlight.db.journal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.heartbeat.Judgement;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;

/** A silence of one box with every part of it set. */
final class MadeSilence {

    private MadeSilence() {}

    static Absence of(String alarm, Path path, Instant at) {
        var members = new TreeMap<>(Map.of("mesa-9-box", new Absence.Member(at, Optional.empty())));
        var evidence = List.of(
                new Evidence(Clue.FEED_ON, at, "north line"),
                new Evidence(Clue.LINK_QUIET, at.plusSeconds(2), "2 boxes"),
                new Evidence(Clue.BATTERY, at, ""));
        return new Absence(
                alarm,
                new AlarmKey("mesa-9", "link-hub", "silent"),
                path,
                Path.feed("north line", "night"),
                at,
                at.plusSeconds(180),
                members,
                Verdict.COMMS_LOSS,
                Judgement.by(evidence),
                Optional.empty());
    }
}
