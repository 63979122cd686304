package yardlight.escalation;

import java.time.Duration;
import java.util.List;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;

/** Short ladders, and what became of news. */
final class NewsNight {

    private NewsNight() {}

    static Setup calling(Ladder.EndsWhen endsWhen, String... people) {
        return calling(endsWhen, List.of(Fixtures.ana(), Fixtures.ben()), people);
    }

    /** Each of them once, five minutes apart, but whoever is alone twice. */
    static Setup calling(Ladder.EndsWhen endsWhen, List<Contact> contacts, String... people) {
        List<Rung> rungs = List.of(people).stream()
                .map(one -> new Rung(List.of(one), Duration.ofMinutes(5), people.length == 1 ? 2 : 1))
                .toList();
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                contacts,
                List.of(),
                List.of(new Ladder("night", endsWhen, rungs, 0)));
    }

    static List<NoticeState> states(Night night) {
        return news(night).stream().map(Notice::state).toList();
    }

    static List<Notice> news(Night night) {
        return night.picture().notices().stream()
                .filter(notice -> notice.purpose() == Purpose.NEWS)
                .toList();
    }
}
