package yardlight.gateway.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;

class CardsTest {

    private static final Instant NOW = Fixtures.at("2026-11-25T02:15");
    private static final String TEXT = "MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47";

    private final Cards cards = cards(Tongues.ENGLISH);

    private static Cards cards(Tongue tongue) {
        var clock = new Clockface(Fixtures.CHICAGO, NOW, tongue.locale());
        return new Cards(new Telling(tongue, new Names(Fixtures.theSetup()), clock));
    }

    @Test
    void of_an_alarm_say_what_how_bad_since_when_and_who_was_told() {
        Sheet.Card card = cards.of(new RecordedAlarm(Fixtures.anAlarm(), Optional.of(calling(Place.FOOT))));

        assertThat(card.name()).isEqualTo("WATER TANK high-high");
        assertThat(card.standing()).isEqualTo("Nobody has it");
        assertThat(card.reading()).isEqualTo("18.4 ft, limit 18.0 ft");
        assertThat(card.since()).isEqualTo("2:13 AM");
        assertThat(card.said()).isEqualTo(TEXT);
        assertThat(card.sayings()).containsExactly(new Sheet.Saying("Ana Ruelas", "sent by sms-mail 2:14 AM"));
        assertThat(card.next()).isEqualTo("Called rung 1, round 1; goes on at 2:18 AM");
    }

    @Test
    void of_an_alarm_that_somebody_has_say_who() {
        Alarm taken = Fixtures.anAlarm()
                .draft()
                .state(AlarmState.ACKNOWLEDGED)
                .acknowledgedBy(Optional.of("ben"))
                .done();

        Sheet.Card card = cards.of(new RecordedAlarm(taken, Optional.empty()));

        assertThat(card.standing()).isEqualTo("Ben Tully has it");
        assertThat(card.next()).isEmpty();
        assertThat(card.sayings()).isEmpty();
    }

    @Test
    void say_the_same_in_spanish() {
        Sheet.Card card =
                cards(Tongues.SPANISH).of(new RecordedAlarm(Fixtures.anAlarm(), Optional.of(calling(Place.FOOT))));

        assertThat(card.name()).isEqualTo("WATER TANK alto-alto");
        assertThat(card.standing()).isEqualTo("Nadie se encarga");
        assertThat(card.reading()).isEqualTo("18.4 ft, límite 18.0 ft");
        assertThat(card.sayings()).containsExactly(new Sheet.Saying("Ana Ruelas", "enviado por sms-mail 2:14"));
        assertThat(card.next()).isEqualTo("Se llamó al peldaño 1, vuelta 1; sigue a las 2:18");
    }

    private static RecordedCallout calling(Place place) {
        var facts = new Callout.Facts(
                "c",
                47,
                "mesa-9",
                "night",
                Priority.HIGH,
                List.of(Fixtures.TANK),
                Fixtures.at("2026-11-25T02:13"),
                1,
                1,
                Set.of("ana"),
                Map.of());
        var notice = new Notice(
                "c.1",
                "ana",
                List.of("c"),
                Priority.HIGH,
                TEXT + " or https://yl.example/a/**********************",
                NoticeState.HANDED_OVER,
                Fixtures.at("2026-11-25T02:13"),
                Optional.empty(),
                Optional.empty(),
                0);
        var recorded = new RecordedNotice(
                notice,
                Optional.of("sms-mail"),
                Optional.of(Fixtures.at("2026-11-25T02:14")),
                Optional.empty(),
                List.of());
        return new RecordedCallout(
                new Callout.Calling(facts, place, Fixtures.at("2026-11-25T02:18")), List.of(recorded));
    }
}
