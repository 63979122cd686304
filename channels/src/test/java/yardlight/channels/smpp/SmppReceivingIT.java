package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.OptionalParameter;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.FakeInbox;
import yardlight.channels.Incoming;
import yardlight.channels.Message;
import yardlight.channels.Receipt;
import yardlight.channels.Receipt.Fate;

/** What a centre brings: receipts, and texts that people write. The answer to it is what the centre then hears. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SmppReceivingIT {

    private static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");
    private static final int OK = SMPPConstant.STAT_ESME_ROK;
    private static final int AGAIN = SMPPConstant.STAT_ESME_RX_T_APPN;

    private final FakeInbox inbox = new FakeInbox();
    private StandInCentre centre;
    private SmppChannel channel;

    @BeforeEach
    void open() throws IOException {
        centre = new StandInCentre();
        channel = SmppChannel.of(Optional.of(Centres.at(centre.port())), InstantSource.fixed(NOW));
    }

    @AfterEach
    void close() throws IOException {
        centre.close();
        channel.close();
    }

    private Bringing listening() {
        channel.listen(inbox);
        await().atMost(30, TimeUnit.SECONDS).until(() -> centre.sessions() > 0);
        return new Bringing(centre);
    }

    private Attempt send(String text) {
        return channel.send(new Message("callout-7.2", "+15755550101", text, NOW));
    }

    @Test
    void brings_a_text_that_somebody_wrote() {
        int answer = listening().text("15755550101", "OK 47");

        assertThat(answer).isEqualTo(OK);
        assertThat(inbox.texts).singleElement().satisfies(text -> {
            assertThat(text.channel()).isEqualTo("smpp");
            assertThat(text.from()).isEqualTo("+15755550101");
            assertThat(text.text()).isEqualTo("OK 47");
            assertThat(text.at()).isEqualTo(NOW);
        });
    }

    @Test
    void leaves_with_the_centre_what_the_inbox_does_not_take_and_knows_it_again() {
        Bringing bringing = listening();
        inbox.taking = false;
        assertThat(bringing.text("15755550101", "OK 47")).isEqualTo(AGAIN);
        inbox.taking = true;
        assertThat(bringing.text("15755550101", "OK 47")).isEqualTo(OK);
        assertThat(bringing.text("15755550101", "OK 47")).isEqualTo(OK);

        assertThat(inbox.offered).hasSize(3);
        assertThat(inbox.offered.get(1).id()).isEqualTo(inbox.offered.get(0).id());
        assertThat(inbox.offered.get(2).id()).isNotEqualTo(inbox.offered.get(0).id());
    }

    @Test
    void leaves_with_the_centre_what_comes_before_anybody_listens() {
        send("MESA 9");

        assertThat(new Bringing(centre).text("15755550101", "OK 47")).isEqualTo(AGAIN);
        assertThat(inbox.offered).isEmpty();
    }

    @Test
    void leaves_with_the_centre_what_the_inbox_fails_at() {
        inbox.failing = true;

        assertThat(listening().text("15755550101", "OK 47")).isEqualTo(AGAIN);
    }

    @Test
    void sends_on_while_the_inbox_blocks() throws Exception {
        Bringing bringing = listening();
        var free = new CountDownLatch(1);
        inbox.whileTaking = () -> free.await(20, TimeUnit.SECONDS);
        ExecutorService hands = Executors.newFixedThreadPool(8);
        try {
            for (int i = 0; i < 7; i++) {
                String words = "OK " + i;
                hands.submit(() -> bringing.text("15755550101", words));
            }
            await().atMost(20, TimeUnit.SECONDS).until(() -> !inbox.offered.isEmpty());

            assertThat(send("MESA 9").outcome()).isEqualTo(Outcome.ACCEPTED);
            free.countDown();
            await().atMost(20, TimeUnit.SECONDS).until(() -> inbox.texts.size() == 7);
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void joins_a_text_in_parts_and_answers_for_none_before_it_is_kept() throws Exception {
        Bringing bringing = listening();
        inbox.taking = false;
        ExecutorService hands = Executors.newFixedThreadPool(2);
        try {
            Future<Integer> second = hands.submit(() -> bringing.part("050003CC0302", "and "));
            Future<Integer> third = hands.submit(() -> bringing.part("050003CC0303", "more"));

            assertThat(bringing.part("050003CC0301", "OK 47 ")).isEqualTo(AGAIN);
            assertThat(second.get()).isEqualTo(AGAIN);
            assertThat(third.get()).isEqualTo(AGAIN);
        } finally {
            hands.shutdownNow();
        }
        inbox.taking = true;

        assertThat(bringing.part("050003CC0302", "and ")).isEqualTo(OK);
        assertThat(bringing.part("050003CC0301", "OK 47 ")).isEqualTo(OK);
        assertThat(bringing.part("050003CC0303", "more")).isEqualTo(OK);

        assertThat(inbox.texts)
                .singleElement()
                .satisfies(text -> assertThat(text.text()).isEqualTo("OK 47 and more"));
        assertThat(inbox.offered)
                .extracting(Incoming::id)
                .containsOnly(inbox.texts.get(0).id());
    }

    @Test
    void joins_parts_of_a_centre_that_brings_one_after_the_other() {
        Bringing bringing = listening();

        assertThat(bringing.part("06080412340201", "OK 47 ")).isEqualTo(OK);
        assertThat(inbox.offered).isEmpty();
        assertThat(bringing.part("06080412340202", "and more")).isEqualTo(OK);

        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("OK 47 and more");
    }

    @Test
    void brings_a_receipt_of_a_text_that_it_sent() {
        Bringing bringing = listening();
        Attempt attempt = send("MESA 9");
        String id = attempt.reference().orElseThrow();

        assertThat(bringing.receipt("id:" + id + " sub:001 dlvrd:001 stat:DELIVRD err:000 text:MESA 9"))
                .isEqualTo(OK);

        assertThat(inbox.receipts).containsExactly(new Receipt("smpp", id, Fate.DELIVERED, "DELIVRD", NOW));
        assertThat(inbox.offered).isEmpty();
    }

    /** A published trace, read (2nd): undeliverable, error 075. */
    @Test
    void brings_a_real_one() {
        int answer = listening()
                .receipt("id:0911897980 sub:001 dlvrd:000 submit date:1201121551 done date:1201121551"
                        + " stat:UNDELIV err:075 text:-PROFILE");

        assertThat(answer).isEqualTo(OK);
        assertThat(inbox.receipts).singleElement().satisfies(receipt -> {
            assertThat(receipt.reference()).isEqualTo("0911897980");
            assertThat(receipt.fate()).isEqualTo(Fate.REFUSED);
            assertThat(receipt.detail()).contains("UNDELIV").contains("075");
        });
    }

    @Test
    void finds_the_text_when_the_receipt_has_its_name_in_decimal_or_in_a_parameter() {
        Bringing bringing = listening();
        String id = send("MESA 9").reference().orElseThrow();

        bringing.receipt("id:" + Long.parseLong(id, 16) + " stat:DELIVRD");
        bringing.receipt(
                "", new OptionalParameter.Receipted_message_id(id), new OptionalParameter.Message_state((byte) 5));

        assertThat(inbox.receipts).extracting(Receipt::reference).containsExactly(id, id);
        assertThat(inbox.receipts).extracting(Receipt::fate).containsExactly(Fate.DELIVERED, Fate.REFUSED);
    }

    @Test
    void takes_what_comes_by_data_sm_too() {
        Bringing bringing = listening();

        assertThat(bringing.data(0x04, "id:a1 stat:DELIVRD")).isEqualTo(OK);
        assertThat(bringing.data(0, "OK 47")).isEqualTo(OK);
        inbox.taking = false;
        assertThat(bringing.data(0, "OK 48")).isEqualTo(AGAIN);

        assertThat(inbox.receipts).extracting(Receipt::reference).containsExactly("a1");
        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("OK 47");
    }

    @Test
    void names_a_text_in_parts_by_its_last_and_hears_of_any_that_failed() {
        Bringing bringing = listening();
        String id = send("A".repeat(307)).reference().orElseThrow();

        bringing.receipt("id:" + Long.toHexString(Long.parseLong(id, 16) - 2) + " stat:UNDELIV err:011");

        assertThat(inbox.receipts).singleElement().satisfies(receipt -> {
            assertThat(receipt.reference()).isEqualTo(id);
            assertThat(receipt.fate()).isEqualTo(Fate.REFUSED);
        });
    }

    @Test
    void leaves_a_receipt_with_the_centre_too() {
        Bringing bringing = listening();
        inbox.taking = false;

        assertThat(bringing.receipt("id:1 stat:DELIVRD")).isEqualTo(AGAIN);
    }

    @Test
    void wants_nothing_brought_again_that_means_nothing_to_it() {
        Bringing bringing = listening();

        assertThat(bringing.receipt("hello")).isEqualTo(OK);
        assertThat(bringing.bring("15755550101", 0x08, 0, "read".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo(OK);
        assertThat(inbox.receipts).isEmpty();
        assertThat(inbox.offered).isEmpty();
    }

    @Test
    void reads_other_codings_and_long_texts() {
        Bringing bringing = listening();
        var payload = new OptionalParameter.Message_payload("OK 47 ".repeat(60).getBytes(StandardCharsets.US_ASCII));

        bringing.bring("15755550101", 0, 8, "señal débil".getBytes(StandardCharsets.UTF_16BE));
        bringing.bring("15755550101", 0, 0, new byte[0], payload);
        bringing.bring("15755550101", 0, 0, HexFormat.of().parseHex("4F4B1B65"));

        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("señal débil", "OK 47 ".repeat(60), "OK€");
    }

    @Test
    void hears_again_over_a_new_session() {
        Bringing bringing = listening();
        centre.cut();
        await().atMost(30, TimeUnit.SECONDS).until(() -> centre.sessions() == 2);

        assertThat(bringing.text("15755550101", "OK 47")).isEqualTo(OK);
        assertThat(inbox.texts).hasSize(1);
    }
}
