package yardlight.gateway.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.account.Moment;
import yardlight.gateway.page.Telling;

/**
 * What a report says of one occurrence of an alarm.
 *
 * @param name as people call it, without the site
 * @param happenedAt at the site, by the box's clock where it has one
 * @param firstHandedOverAt when a carrier took the first call
 * @param firstDeliveredAt when a carrier first said that a call arrived
 * @param answers of people, oldest first; the first one shows when a person knew
 * @param eventToKnowledge from {@code happenedAt} to that; empty while nobody has answered
 * @param told tries to tell people, oldest first
 * @param story what happened in order; only in a report of one alarm
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record Occurred(
        String alarm,
        String site,
        String siteName,
        String zone,
        String point,
        String condition,
        String name,
        String priority,
        Optional<BigDecimal> value,
        Optional<BigDecimal> limit,
        Optional<String> unit,
        Optional<String> text,
        Optional<String> box,
        String state,
        Optional<Instant> happenedAt,
        Optional<Instant> receivedAt,
        Optional<Instant> firstHandedOverAt,
        Optional<Instant> firstDeliveredAt,
        Optional<Instant> returnedAt,
        Optional<Duration> eventToKnowledge,
        List<Answered> answers,
        List<ToldRow> told,
        List<Moment> story) {

    static Occurred of(Alarm alarm, Telling telling, List<Answered> answers, List<ToldRow> told, List<Moment> story) {
        String site = alarm.key().site();
        return new Occurred(
                alarm.id(),
                site,
                telling.names().site(site),
                telling.names().zone(site).getId(),
                alarm.key().point(),
                alarm.condition(),
                telling.subject(alarm),
                alarm.priority().word(),
                alarm.measured().value(),
                alarm.measured().limit(),
                alarm.measured().unit(),
                alarm.measured().text(),
                alarm.box(),
                alarm.state().word(),
                alarm.occurredAt(),
                alarm.receivedAt(),
                first(told.stream().filter(ToldRow::call).map(ToldRow::handedOverAt)),
                first(told.stream().filter(ToldRow::call).map(ToldRow::deliveredAt)),
                alarm.returnedAt().filter(at -> !alarm.active()),
                known(answers).flatMap(known -> alarm.occurredAt().map(at -> Duration.between(at, known.at()))),
                answers,
                told,
                story);
    }

    /** The first person who by this record knew. */
    Optional<Answered> known() {
        return known(answers);
    }

    private static Optional<Answered> known(List<Answered> answers) {
        return answers.stream().findFirst();
    }

    private static Optional<Instant> first(Stream<Optional<Instant>> instants) {
        return instants.flatMap(Optional::stream).min(Instant::compareTo);
    }
}
