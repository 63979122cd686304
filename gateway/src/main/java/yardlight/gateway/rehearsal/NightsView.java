package yardlight.gateway.rehearsal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardlight.escalation.rehearsal.PastCall;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.rehearsal.Season;
import yardlight.escalation.rehearsal.Toll;
import yardlight.gateway.stage.Seasons;

/**
 * Past nights as they were beside what they would have been.
 *
 * @param leftOut how often alarms called that are not played
 * @param alarms that called people, oldest first
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record NightsView(
        Instant from, Instant to, Optional<String> site, int leftOut, Side really, Side would, List<Alarm> alarms) {

    /** Of longer times the lines are not told one by one. */
    private static final Duration FEW_NIGHTS = Duration.ofDays(3);

    /**
     * One of the two.
     *
     * @param lines who was told and who answered; only of a few nights
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Side(
            int texts,
            int mails,
            int atNight,
            int wakings,
            int unanswered,
            Optional<Duration> longestWait,
            Optional<Duration> medianWait,
            List<Toll.Person> people,
            Optional<List<Rehearsal.Line>> lines) {

        static Side of(Toll toll, Optional<Season> season) {
            return new Side(
                    toll.texts(),
                    toll.mails(),
                    toll.atNight(),
                    toll.wakings(),
                    toll.unanswered(),
                    toll.longest(),
                    toll.median(),
                    toll.people(),
                    season.map(Season::lines));
        }
    }

    /** An alarm that called, on both sides. */
    record Alarm(
            String alarm,
            String site,
            String point,
            String condition,
            String priority,
            Instant at,
            CallEnd really,
            CallEnd would) {}

    /**
     * What came of it on one side.
     *
     * @param calls whether it called anybody
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record CallEnd(
            boolean calls, Optional<Instant> firstTextAt, Optional<String> answeredBy, Optional<Instant> answeredAt) {

        static CallEnd of(PastCall call) {
            return new CallEnd(call.calls(), call.toldAt(), call.by(), call.answeredAt());
        }
    }

    static NightsView of(Instant from, Instant to, Optional<String> site, Seasons.Compared compared) {
        boolean few = Duration.between(from, to).compareTo(FEW_NIGHTS) <= 0;
        return new NightsView(
                from,
                to,
                site,
                compared.leftOut(),
                Side.of(compared.tollThen(), Optional.of(compared.really()).filter(any -> few)),
                Side.of(compared.tollNow(), Optional.of(compared.would()).filter(any -> few)),
                IntStream.range(0, compared.really().calls().size())
                        .mapToObj(i -> alarm(
                                compared.really().calls().get(i),
                                compared.would().calls().get(i)))
                        .toList());
    }

    private static Alarm alarm(PastCall really, PastCall would) {
        return new Alarm(
                really.alarm(),
                really.key().site(),
                really.key().point(),
                really.key().condition(),
                really.priority().word(),
                really.at(),
                CallEnd.of(really),
                CallEnd.of(would));
    }
}
