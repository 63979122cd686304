package yardlight.gateway.silence;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Judgement;

/**
 * A silence as the API shows it.
 *
 * @param alarm id of its alarm
 * @param told with which verdict people were called
 * @param verdict what it is taken for by now
 * @param confidence probability of the verdict, 0 to 1
 * @param path what its boxes have in common, {@code link hub}
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
public record SilenceView(
        String alarm,
        String told,
        String verdict,
        double confidence,
        String path,
        Instant since,
        Instant foundAt,
        Optional<Instant> endedAt,
        List<ReasonView> reasons,
        List<MemberView> boxes) {

    private static final double THOUSAND = 1_000;

    /**
     * One piece of evidence.
     *
     * @param weight how much it speaks for the power rather than the link, in powers of ten; negative for the link
     */
    public record ReasonView(String text, Instant at, double weight) {}

    /** A box in it. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    public record MemberView(String box, Instant since, Optional<Instant> backAt) {}

    /** The silence in this form. */
    public static SilenceView of(Absence absence) {
        Judgement judgement = absence.judgement();
        return new SilenceView(
                absence.alarm(),
                absence.told().condition(),
                absence.verdict().condition(),
                rounded(judgement.confidence()),
                absence.shared().kind().name().toLowerCase(Locale.ROOT) + " "
                        + absence.shared().name(),
                absence.since(),
                absence.foundAt(),
                absence.endedAt(),
                judgement.evidence().values().stream()
                        .map(one -> new ReasonView(one.words(), one.at(), rounded(one.weight())))
                        .toList(),
                absence.members().entrySet().stream()
                        .map(one -> new MemberView(
                                one.getKey(),
                                one.getValue().since(),
                                one.getValue().back()))
                        .toList());
    }

    private static double rounded(double value) {
        return Math.round(value * THOUSAND) / THOUSAND;
    }
}
