package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeInbox;
import yardlight.channels.Incoming;

class ArrivalsTest {

    private static final String ANA = "+15755550101";

    private final FakeInbox inbox = new FakeInbox();
    private Instant now = Instant.parse("2026-11-25T09:13:00Z");
    private final Arrivals arrivals = new Arrivals(Optional.empty(), new References(Duration.ofHours(6)), () -> now);

    private static Entry entry(String pdu) {
        return Entry.told(new Dialogue.Unasked("+CMT: ," + Pdus.length(pdu), pdu))
                .orElseThrow();
    }

    private static Entry part(int sequence, String text) {
        return entry(Pdus.delivered(ANA, "050003CC020" + sequence, text, StandInModem.NOW));
    }

    private Set<Entry> take(Entry... entries) {
        return arrivals.take(List.of(entries), inbox, false);
    }

    @Test
    void drop_a_part_whose_others_have_not_come_within_an_hour() {
        Entry alone = part(1, "OK 47 ");

        assertThat(take(alone)).isEmpty();
        now = now.plus(Duration.ofMinutes(59));
        assertThat(take(alone)).isEmpty();
        now = now.plus(Duration.ofMinutes(2));
        assertThat(take(alone)).containsExactly(alone);
        assertThat(inbox.offered).isEmpty();
    }

    @Test
    void do_nothing_about_a_part_that_comes_once_more() {
        take(part(1, "OK 47 "), part(2, "and more"));
        Entry again = part(1, "OK 47 ");

        assertThat(take(again)).containsExactly(again);
        assertThat(inbox.texts).hasSize(1);
    }

    @Test
    void join_what_was_told_with_what_is_kept() {
        assertThat(take(part(1, "OK 47 "))).isEmpty();
        Entry last = part(2, "and more");

        assertThat(take(last)).containsExactly(last);
        assertThat(inbox.texts).extracting(Incoming::text).containsExactly("OK 47 and more");
    }

    @Test
    void tell_texts_with_the_same_words_apart_by_their_time() {
        take(
                entry(Pdus.delivered(ANA, "OK", StandInModem.NOW)),
                entry(Pdus.delivered(ANA, "OK", "62115290311000")),
                entry(Pdus.delivered(ANA, "OK", StandInModem.NOW)));

        assertThat(inbox.texts).extracting(Incoming::id).hasSize(3);
        assertThat(Set.copyOf(inbox.texts)).hasSize(2);
    }

    /** The service centre's number, +15755550190, has a country. */
    @Test
    void take_a_sender_for_one_of_the_service_centre_s_country_when_our_own_number_is_not_known() {
        take(entry(Pdus.delivered("5755550101", "OK", StandInModem.NOW)));

        assertThat(inbox.texts).extracting(Incoming::from).containsExactly(ANA);
    }

    @Test
    void leave_what_is_no_message_to_us() {
        assertThat(take(entry(Pdus.CENTRE + "01000B915157550501F100000A"))).isEmpty();
    }

    @Test
    void are_read_from_a_list_with_or_without_the_service_centre_and_without_what_is_to_be_sent() {
        String pdu = Pdus.delivered(ANA, "OK 47", StandInModem.NOW);
        String bare = pdu.substring(Pdus.CENTRE.length());
        var list = new Answer(
                List.of(
                        "+CMGL: 3,0,," + Pdus.length(pdu),
                        pdu,
                        "+CMGL: 4,1,\"Ruelas, Ana\"," + Pdus.length(pdu),
                        bare,
                        "+CMGL: 5,2,,23",
                        "0011000B916407281553F80000AA0AE8329BFD4697D9EC37",
                        "+CMGL: 6,1,,"),
                "OK");

        List<Entry> entries = Entry.listed(list);

        assertThat(entries).extracting(entry -> entry.index().orElseThrow()).containsExactly(3, 4);
        assertThat(entries)
                .allSatisfy(entry -> assertThat(Arrays.equals(entry.message(), Pdus.HEX.parseHex(bare)))
                        .isTrue());
        assertThat(entries.get(0).centre()).contains("+15755550190");
        assertThat(entries.get(1).centre()).isEmpty();
    }
}
