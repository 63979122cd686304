package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Incoming;

/** What a modem has for us: texts that people write. */
class ModemReceivingIT extends WithModem {

    @Test
    void brings_a_text_that_somebody_wrote_and_takes_it_off_the_card() {
        listening();

        modem.brings(ANA, "OK 47");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).singleElement().satisfies(text -> {
            assertThat(text.channel()).isEqualTo("modem");
            assertThat(text.from()).isEqualTo(ANA);
            assertThat(text.text()).isEqualTo("OK 47");
            assertThat(text.at()).isEqualTo(NOW);
        });
    }

    @Test
    void leaves_on_the_card_what_the_inbox_does_not_take_and_brings_it_again_under_the_same_id() {
        polls();
        inbox.taking = false;
        listening();
        modem.brings(ANA, "OK 47");
        await().atMost(20, TimeUnit.SECONDS).until(() -> inbox.offered.size() > 1);
        assertThat(modem.card.size()).isOne();

        inbox.taking = true;

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
        assertThat(inbox.offered)
                .extracting(Incoming::id)
                .containsOnly(inbox.texts.get(0).id());
    }

    @Test
    void leaves_on_the_card_what_the_inbox_fails_at() {
        polls();
        inbox.failing = true;
        listening();
        modem.brings(ANA, "OK 47");
        await().atMost(20, TimeUnit.SECONDS).until(() -> !inbox.offered.isEmpty());

        inbox.failing = false;

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
    }

    @Test
    void leaves_everything_on_the_card_until_somebody_listens() {
        modem.brings(ANA, "OK 47");
        assertThat(channel.knock()).isEmpty();
        assertThat(modem.card.size()).isOne();

        listening();

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
    }

    @Test
    void finds_what_the_modem_does_not_tell_of() {
        polls();
        modem.tells = false;
        listening();

        modem.brings(ANA, "OK 47");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
    }

    @Test
    void empties_a_card_that_is_full() {
        modem.tells = false;
        for (int i = 0; modem.brings(ANA, "OK " + i); i++) {
            assertThat(i).isLessThan(100);
        }
        listening();

        untilTheCardIsEmpty();
        assertThat(modem.brings(ANA, "OK 47")).isTrue();
        assertThat(inbox.texts).hasSize(10);
    }

    @Test
    void leaves_out_what_was_on_the_card_for_more_than_a_day_at_the_start() {
        modem.keeps(Pdus.delivered(ANA, "OK", "62112290310000"), "CMTI");
        modem.brings(ANA, "OK 47");
        listening();

        untilTheCardIsEmpty();
        assertThat(inbox.offered).extracting(Incoming::text).containsExactly("OK 47");
    }

    @Test
    void joins_parts_in_any_order_and_keeps_them_on_the_card_until_it_is_whole() {
        listening();
        modem.keeps(Pdus.delivered(ANA, "050003CC0202", "und more", StandInModem.NOW), "CMTI");
        assertThat(channel.knock()).isEmpty();
        assertThat(modem.card.size()).isOne();
        assertThat(inbox.offered).isEmpty();

        modem.keeps(Pdus.delivered(ANA, "050003CC0201", "OK 47 ", StandInModem.NOW), "CMTI");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("OK 47 und more");
    }

    @Test
    void brings_a_text_in_parts_again_whole_and_under_the_same_id() {
        polls();
        inbox.taking = false;
        listening();
        modem.keeps(Pdus.delivered(ANA, "050003CC0201", "OK 47 ", StandInModem.NOW), "CMTI");
        modem.keeps(Pdus.delivered(ANA, "050003CC0202", "and more", StandInModem.NOW), "CMTI");
        await().atMost(20, TimeUnit.SECONDS).until(() -> inbox.offered.size() > 1);
        assertThat(modem.card.size()).isEqualTo(2);

        inbox.taking = true;

        untilTheCardIsEmpty();
        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("OK 47 and more");
        assertThat(inbox.offered)
                .extracting(Incoming::id)
                .containsOnly(inbox.texts.get(0).id());
    }

    /** Its own number is +15755550100. */
    @ParameterizedTest
    @CsvSource({"+15755550101, +15755550101", "5755550101, +15755550101", "57555, 57555", "MESA, MESA"})
    void names_a_sender_as_an_answer_is_addressed(String from, String address) {
        listening();

        modem.brings(from, "OK 47");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).extracting(Incoming::from).containsExactly(address);
    }

    @Test
    void reads_texts_in_the_other_alphabet() {
        listening();

        modem.keeps(Pdus.delivered(ANA, "", "señal débil á 3 °C", StandInModem.NOW), "CMTI");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("señal débil á 3 °C");
    }

    @Test
    void does_not_stumble_over_what_cannot_be_read() {
        modem.keeps("07915157550591F0040B9151", "CMTI");
        modem.brings(ANA, "OK 47");
        listening();

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
    }

    @Test
    void hears_a_text_that_comes_while_one_goes_out() {
        listening();
        modem.noise.add("+CMTI: \"SM\",1");
        modem.tells = false;
        modem.brings(ANA, "OK 47");

        send("MESA 9");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
        assertThat(modem.texts()).containsExactly("MESA 9");
    }

    @Test
    void hears_again_from_a_modem_that_was_pulled_out() {
        listening();
        modem.pullOut();
        modem.plugIn();
        await().atMost(30, TimeUnit.SECONDS).until(() -> channel.knock().isEmpty());

        modem.brings(ANA, "OK 47");

        untilTheCardIsEmpty();
        assertThat(inbox.texts).hasSize(1);
    }
}
