package yardlight.gateway.answer;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import yardlight.db.swap.Swaps;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.SwapSaid;
import yardlight.escalation.reply.Said;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.SwapDay;
import yardlight.escalation.walltime.WallTime;
import yardlight.escalation.wording.Wording;
import yardlight.gateway.edit.Takeover;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Names;
import yardlight.gateway.sentence.Locales;

/**
 * What people text about their turns: {@code SWAP FRI} asks the others of the roster, {@code YES 31} takes the turn, {@code NO
 * 31} does not, or takes one's own question back. The numbers are none that a call has, so no answer is taken for another.
 */
@Component
class Swapping {

    /** As much as the history of edits keeps of who it was. */
    private static final int LONGEST_NAME = 50;

    private final Swaps swaps;
    private final Takeover takeover;
    private final Lane lane;
    private final MessageSource words;

    Swapping(Swaps swaps, Takeover takeover, Lane lane, MessageSource words) {
        this.swaps = swaps;
        this.takeover = takeover;
        this.lane = lane;
        this.words = words;
    }

    /** Empty when it is not about a turn. */
    Optional<String> answer(Said said, Calls calls) {
        if (said instanceof Said.Swap swap) {
            SwapSentences sentences = SwapSentences.in(calls.person().language());
            return Optional.of(swap.day().map(day -> ask(day, calls)).orElseGet(sentences::whichDay));
        }
        if (said instanceof Said.No no) {
            return meant(no.code(), calls).map(offer -> no(offer, calls));
        }
        if (said instanceof Said.Ok ok && !ok.codes().isEmpty()) {
            return ok.codes().size() == 1
                    ? meant(ok.codes().get(0), calls).map(offer -> yes(offer, calls))
                    : Optional.empty();
        }
        return said instanceof Said.Ok || said instanceof Said.Unclear ? withoutNumber(calls) : Optional.empty();
    }

    /** {@code Yes} and no more can only mean the one question that waits, but nobody gets a turn by a guess. */
    private Optional<String> withoutNumber(Calls calls) {
        boolean alone = calls.waiting().codesOf(calls.ids()).isEmpty();
        List<Offer> waiting = alone ? asking(calls) : List.of();
        return waiting.size() == 1
                ? Optional.of(SwapSentences.in(calls.person().language())
                        .withNumber(waiting.get(0).code()))
                : Optional.empty();
    }

    /** The codes of the turns that these contacts are asked to take, whatever they said so far. */
    Set<Integer> asked(Set<String> contacts, Instant now) {
        return swaps.open(now).stream()
                .filter(offer -> offer.asked().stream().anyMatch(contacts::contains))
                .map(Offer::code)
                .collect(Collectors.toSet());
    }

    private List<Offer> asking(Calls calls) {
        return swaps.open(calls.clocks().now()).stream()
                .filter(offer -> offer.asked().stream()
                        .anyMatch(one ->
                                calls.ids().contains(one) && !offer.declined().contains(one)))
                .toList();
    }

    /** A call with this number comes first. */
    private Optional<Offer> meant(int code, Calls calls) {
        List<Integer> codes = List.of(code);
        boolean call = !Waiting.withCodes(codes, calls.waiting().waiting()).isEmpty()
                || !Waiting.withCodes(codes, calls.waiting().taken()).isEmpty();
        return call
                ? Optional.empty()
                : calls.ids().stream()
                        .sorted()
                        .flatMap(contact ->
                                swaps.withCode(code, contact, calls.clocks().now()).stream())
                        .findFirst();
    }

    private String ask(SwapDay day, Calls calls) {
        Answer answer = new Answer.Refusal("");
        // A line that several share can be any one's of them: it is whoever has a turn then.
        for (String contact : calls.ids().stream().sorted().toList()) {
            answer = lane.decide(new Stimulus.Swap(new SwapSaid.Asked(contact, day)));
            if (answer instanceof Answer.Swapped asked) {
                return asked(asked, calls);
            }
        }
        return refused(answer, calls);
    }

    private String asked(Answer.Swapped asked, Calls calls) {
        Offer offer = asked.offer();
        Language language = calls.person().language();
        var names = new Names(calls.setup());
        List<String> others = offer.asked().stream().map(names::contact).toList();
        SwapSentences sentences = SwapSentences.in(language);
        return asked.again()
                ? sentences.askedAlready(others, offer.code())
                : sentences.asked(
                        others,
                        span(offer, calls.setup(), language),
                        calls.clocks().read(offer.expiresAt(), zone(offer, calls.setup())),
                        offer.code());
    }

    private String yes(Offer offer, Calls calls) {
        Set<String> ids = calls.ids();
        String contact = offer.asked().stream()
                .filter(ids::contains)
                .findFirst()
                .orElseGet(() -> calls.person().id());
        Contact taker = calls.setup().contacts().get(contact);
        String name = taker.name().length() <= LONGEST_NAME
                ? taker.name()
                : taker.name().substring(0, LONGEST_NAME);
        boolean again = offer.taker().filter(contact::equals).isPresent();
        Answer answer = again ? new Answer.Swapped(offer, true) : takeover.take(offer, contact, name + ", by text");
        return answer instanceof Answer.Refusal
                ? refused(answer, calls)
                : SwapSentences.in(taker.language())
                        .took(
                                new Names(calls.setup()).contact(offer.by()),
                                span(offer, calls.setup(), taker.language()));
    }

    private String no(Offer offer, Calls calls) {
        boolean own = calls.ids().contains(offer.by());
        String contact = own
                ? offer.by()
                : offer.asked().stream()
                        .filter(calls.ids()::contains)
                        .findFirst()
                        .orElseThrow();
        Answer answer = lane.decide(new Stimulus.Swap(
                own ? new SwapSaid.Withdrawn(offer.id(), contact) : new SwapSaid.Declined(offer.id(), contact)));
        if (answer instanceof Answer.Swapped said) {
            Language language = calls.person().language();
            SwapSentences sentences = SwapSentences.in(language);
            return own
                    ? sentences.takenBack(span(offer, calls.setup(), language))
                    : sentences.declined(
                            new Names(calls.setup()).contact(offer.by()),
                            !said.offer().declined().containsAll(said.offer().asked()));
        }
        return refused(answer, calls);
    }

    private String refused(Answer answer, Calls calls) {
        Locale locale = Locales.of(calls.person().language());
        String why = answer instanceof Answer.Refusal refusal
                ? yardlight.gateway.sentence.Sentences.say(refusal.why(), words, locale)
                : "";
        return calls.sentences().refused(why);
    }

    private static String span(Offer offer, Setup setup, Language language) {
        ZoneId zone = zone(offer, setup);
        return Wording.span(WallTime.instant(offer.from(), zone), WallTime.instant(offer.to(), zone), zone, language);
    }

    /** A roster can be gone by the time of an answer. */
    private static ZoneId zone(Offer offer, Setup setup) {
        return Optional.ofNullable(setup.rosters().get(offer.roster()))
                .map(Roster::zone)
                .orElse(ZoneOffset.UTC);
    }
}
