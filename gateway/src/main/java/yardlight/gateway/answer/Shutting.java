package yardlight.gateway.answer;

import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.Answer;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Wish;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Names;

/**
 * Asks a site to shut in by text: {@code SHUT 47} is answered with a code, and only the code, sent back from the same line,
 * asks. A code is tried once; whoever guesses begins anew.
 */
@Component
class Shutting {

    private final ShutIns shutIns;
    private final Lane lane;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    Shutting(ShutIns shutIns, Lane lane, InstantSource clock) {
        this.shutIns = shutIns;
        this.lane = lane;
        this.clock = clock;
    }

    /** @return one line for the sender */
    String take(Said.ShutIn said, Sender sender, Contact person, Waiting calls, Setup setup) {
        Sentences sentences = Sentences.in(person.language());
        String from = sender.toString();
        return said.number() < Wish.LEAST_CODE
                ? wish(said.number(), from, person, calls, setup, sentences)
                : code(said.number(), from, person, setup, sentences);
    }

    private String wish(int number, String from, Contact person, Waiting calls, Setup setup, Sentences sentences) {
        Set<String> sites = Stream.concat(calls.waiting().stream(), calls.taken().stream())
                .filter(one -> hasCode(one, number))
                .map(one -> one.alarm().key().site())
                .collect(Collectors.toSet());
        if (sites.size() != 1) {
            return sentences.noSuchNumber(List.of(number));
        }
        String site = sites.iterator().next();
        int code = Wish.LEAST_CODE + random.nextInt(Wish.MOST_CODE - Wish.LEAST_CODE + 1);
        Answer answer = lane.decide(new Stimulus.ShutIn(site, new ShutInSaid.Wished(person.id(), from, code)));
        return answer instanceof Answer.Refusal refusal
                ? sentences.refused(refusal.reason())
                : sentences.makeSureToShutIn(new Names(setup).site(site), code);
    }

    private static boolean hasCode(RecordedAlarm one, int number) {
        return one.callout()
                .filter(callout -> callout.callout().facts().code() == number)
                .isPresent();
    }

    private String code(int code, String from, Contact person, Setup setup, Sentences sentences) {
        List<Standing> wished = shutIns.wished(person.id(), clock.instant());
        Optional<Standing> meant = wished.stream()
                .filter(one -> one.wish().filter(wish -> wish.code() == code).isPresent())
                .findFirst();
        for (Standing standing : meant.map(List::of).orElse(wished)) {
            Answer answer =
                    lane.decide(new Stimulus.ShutIn(standing.site(), new ShutInSaid.Code(person.id(), from, code)));
            if (answer instanceof Answer.Asked asked) {
                return sentences.shutInAsked(new Names(setup).site(standing.site()), asked.joined());
            }
            if (answer instanceof Answer.Refusal refusal) {
                return sentences.refused(refusal.reason());
            }
        }
        return sentences.wrongCode();
    }
}
