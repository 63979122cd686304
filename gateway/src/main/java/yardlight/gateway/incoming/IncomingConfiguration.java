package yardlight.gateway.incoming;

import java.time.InstantSource;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.Channel;
import yardlight.channels.Receiver;
import yardlight.db.incoming.IncomingTexts;
import yardlight.db.incoming.Receipts;
import yardlight.gateway.lane.Intake;

/** Puts together what takes in texts and receipts. */
@Configuration(proxyBeanMethods = false)
class IncomingConfiguration {

    @Bean
    Rounds answersOut(IncomingTexts texts, ObjectProvider<Channel> channels, Asked asked, InstantSource clock) {
        var byName = channels.orderedStream().collect(Collectors.toMap(Channel::name, Function.identity()));
        return new Rounds("answers", new AnswersOut(texts, byName, asked, clock)::look);
    }

    @Bean
    Rounds receiptsIn(Receipts receipts, Intake intake, InstantSource clock) {
        var heeding = new Heeding(receipts, intake, clock);
        return new Rounds("receipts", goesOn -> heeding.look());
    }

    @Bean
    Listening listening(
            ObjectProvider<Receiver> receivers,
            IncomingTexts texts,
            Receipts receipts,
            Asked asked,
            InstantSource clock,
            Rounds answersOut,
            Rounds receiptsIn) {
        Runnable wake = () -> {
            answersOut.wake();
            receiptsIn.wake();
        };
        return new Listening(receivers.orderedStream().toList(), new Arrivals(texts, receipts, asked, clock, wake));
    }
}
