package yardlight.gateway.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.document.Fields;

/** Reads what is to be rehearsed. */
final class QuestionReader {

    private static final String ID_RULE = "must be 1 to 64 of a-z, 0-9 and -, and not start with -";

    /** Later than anybody answers, and early enough to be added to every time that can be written. */
    private static final Duration LATEST_ANSWER = Duration.ofDays(31);

    private final Setup setup;
    private final Instant now;

    /**
     * @param setup the one that the question is about
     * @param now when the alarm occurs if the question does not say
     */
    QuestionReader(Setup setup, Instant now) {
        this.setup = setup;
        this.now = now;
    }

    /** Empty when something is wrong. */
    Optional<Rehearsal.Question> read(Fields fields) {
        fields.needs("site", "point", "condition");
        Optional<String> site = fields.as(
                "site", "must be a site of the setup", id -> Optional.of(id).filter(setup.sites()::containsKey));
        Optional<String> point = fields.as("point", ID_RULE, QuestionReader::id);
        Optional<String> condition = fields.as("condition", ID_RULE, QuestionReader::id);
        Optional<Priority> priority = fields.as("priority", "must be low, medium, high or critical", Priority::of);
        Instant at = fields.instant("at").orElse(now);
        Map<String, Duration> answers = answers(fields);
        return site.flatMap(s -> point.flatMap(p -> condition.map(c -> new AlarmKey(s, p, c))))
                .map(key -> new Rehearsal.Question(key, priority, at, answers));
    }

    /** By contact, how long after; {@code answers} of the fields. */
    Map<String, Duration> answers(Fields fields) {
        var answers = new HashMap<String, Duration>();
        for (Fields answer : fields.objects("answers")) {
            Optional<String> contact = answer.needs("contact", "after")
                    .as(
                            "contact",
                            "must be a contact of the setup",
                            id -> Optional.of(id).filter(setup.contacts()::containsKey));
            Optional<Duration> after = answer.duration("after", Duration.ZERO, LATEST_ANSWER);
            contact.ifPresent(id -> after.ifPresent(wait -> answers.put(id, wait)));
            answer.nothingElse();
        }
        return answers;
    }

    private static Optional<String> id(String text) {
        return Optional.of(text).filter(AlarmKey.ID.asMatchPredicate());
    }
}
