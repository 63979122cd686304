package yardlight.gateway.reports;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.report.SentTexts;
import yardlight.db.report.SentTexts.SentText;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.performance.Burden;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Names;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Counts what people were sent, and when: one query. Months and nights are those of the person. */
@Component
class BurdenReports {

    /** Zones differ by less than a day, and a notice may wait for the end of quiet hours before it goes. */
    private static final Duration MARGIN = Duration.ofDays(2);

    private static final String MAIL = "mail";

    private final SentTexts texts;
    private final SetupInForce inForce;
    private final OneReport one;

    BurdenReports(SentTexts texts, SetupInForce inForce, OneReport one) {
        this.texts = texts;
        this.inForce = inForce;
        this.one = one;
    }

    /**
     * By the month, then whoever was woken most, then the contact's id.
     *
     * @throws Problem 503 while another report is made
     */
    List<MonthOfTexts> of(Months asked) {
        return one.make(() -> counted(asked));
    }

    private List<MonthOfTexts> counted(Months asked) {
        Setup setup = inForce.setup();
        Map<Whose, Counted> counted = new LinkedHashMap<>();
        texts.each(
                asked.span(asked.from()).from().minus(MARGIN),
                asked.span(asked.to()).to().plus(MARGIN),
                text -> {
                    ZoneId zone = zone(text.contact(), setup).orElse(asked.zone());
                    YearMonth month = YearMonth.from(text.at().atZone(zone));
                    if (!month.isBefore(asked.from()) && !month.isAfter(asked.to())) {
                        counted.computeIfAbsent(new Whose(text.contact(), month, zone), any -> new Counted())
                                .add(text);
                    }
                });
        return counted.entrySet().stream()
                .map(one -> one.getValue().told(one.getKey(), new Names(setup)))
                .sorted(java.util.Comparator.comparing(MonthOfTexts::month)
                        .thenComparing(MonthOfTexts::wakings, java.util.Comparator.reverseOrder())
                        .thenComparing(MonthOfTexts::contact))
                .toList();
    }

    private static Optional<ZoneId> zone(String contact, Setup setup) {
        return Optional.ofNullable(setup.contacts().get(contact)).map(Contact::zone);
    }

    private record Whose(String contact, YearMonth month, ZoneId zone) {}

    private static final class Counted {

        private final List<Instant> texts = new ArrayList<>();
        private int mails;
        private int calls;

        void add(SentText text) {
            calls += text.purpose().equals(Purpose.CALL.word()) ? 1 : 0;
            if (text.channel().equals(MAIL)) {
                mails++;
            } else {
                texts.add(text.at());
            }
        }

        MonthOfTexts told(Whose whose, Names names) {
            return new MonthOfTexts(
                    whose.contact(),
                    names.contact(whose.contact()),
                    whose.zone().getId(),
                    whose.month().toString(),
                    texts.size(),
                    mails,
                    calls,
                    (int) texts.stream()
                            .filter(at -> Burden.night(at, whose.zone()))
                            .count(),
                    Burden.wakings(texts, whose.zone()));
        }
    }
}
