package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attachment;
import yardlight.channels.Message;
import yardlight.db.outbox.Outgoing;
import yardlight.gateway.OutOfMemory;

class SendingTest {

    private final Workbench bench = new Workbench();
    private final Outgoing outgoing = bench.outgoing("n-1", 0);
    private final AtomicInteger freed = new AtomicInteger();

    @Test
    void sends_has_it_recorded_and_frees_its_place() {
        bench.sending.send(outgoing, freed::incrementAndGet);

        assertThat(bench.texts.taken()).hasSize(1);
        assertThat(bench.intake.tried).hasSize(1);
        assertThat(bench.outbox.done).containsExactly(outgoing);
        assertThat(freed).hasValue(1);
    }

    @Test
    void does_not_send_what_is_over_and_frees_its_place() {
        bench.outbox.wanted = () -> false;

        bench.sending.send(outgoing, freed::incrementAndGet);

        assertThat(bench.texts.tried()).isEmpty();
        assertThat(bench.outbox.done).containsExactly(outgoing);
        assertThat(freed).hasValue(1);
    }

    @Test
    void gives_back_what_a_mistake_kept_from_being_sent_and_frees_its_place() {
        bench.texts.answering(message -> {
            throw new StackOverflowError("made up for this test");
        });

        bench.sending.send(outgoing, freed::incrementAndGet);

        assertThat(bench.outbox.givenBack).containsExactly(outgoing);
        assertThat(bench.intake.tried).isEmpty();
        assertThat(freed).hasValue(1);
    }

    @Test
    void gives_back_what_it_had_no_memory_to_send() {
        bench.texts.answering(message -> OutOfMemory.now());

        bench.sending.send(outgoing, freed::incrementAndGet);

        assertThat(bench.outbox.givenBack).containsExactly(outgoing);
        assertThat(freed).hasValue(1);
    }

    @Test
    void frees_its_place_even_when_it_cannot_be_given_back() {
        bench.outbox.wanted = () -> {
            throw new IllegalStateException("the database is away");
        };
        bench.outbox.mistakes.add(new IllegalStateException("the database is away still"));

        assertThatThrownBy(() -> bench.sending.send(outgoing, freed::incrementAndGet))
                .hasMessage("the database is away still");

        assertThat(freed).hasValue(1);
    }

    @Test
    void has_a_picture_made_only_for_a_mail() {
        var picture = new Attachment("curve.png", "image/png", new byte[] {1}, "WATER TANK: last 18.4 ft");
        bench.pictures = notice -> Optional.of(picture);

        bench.sending.send(outgoing, freed::incrementAndGet);
        bench.sending.send(bench.mail("n-2"), freed::incrementAndGet);

        assertThat(bench.texts.taken()).extracting(Message::attachment).containsExactly(Optional.empty());
        assertThat(bench.mails.taken()).extracting(Message::attachment).containsExactly(Optional.of(picture));
    }
}
