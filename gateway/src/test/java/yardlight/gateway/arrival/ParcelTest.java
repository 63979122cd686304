package yardlight.gateway.arrival;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ParcelTest {

    private static final int MOST = 20_000;

    private final Room room = new Room(10_000);

    @Test
    void keeps_what_comes_in_parts() {
        Parcel parcel = parcel(3_000, 3_000);

        assertThat(parcel.fate()).isEqualTo(Parcel.Fate.KEPT);
        assertThat(parcel.bytes()).hasSize(6_000);
        assertThat(room.taken()).isEqualTo(6_000 - Parcel.FREE);
    }

    @Test
    void finds_place_for_what_is_small_also_when_there_is_no_room() {
        Parcel large = parcel(14_096);

        Parcel small = parcel(4_000, 96);

        assertThat(large.fate()).isEqualTo(Parcel.Fate.KEPT);
        assertThat(small.fate()).isEqualTo(Parcel.Fate.KEPT);
    }

    @Test
    void drops_at_once_what_there_is_no_room_for_so_that_another_finds_some() {
        Parcel half = parcel(9_000);

        Parcel refused = parcel(8_000, 4_000);

        assertThat(refused.fate()).isEqualTo(Parcel.Fate.NO_ROOM);
        assertThat(refused.bytes()).isEmpty();
        assertThat(refused.seen()).isEqualTo(12_000);
        assertThat(room.taken()).isEqualTo(9_000 - Parcel.FREE);
        half.close();
        assertThat(room.taken()).isZero();
    }

    @Test
    void is_too_large_beyond_the_most_and_not_worth_reading_beyond_twice_as_much() {
        var wide = new Room(Long.MAX_VALUE);
        var parcel = new Parcel(wide, MOST);
        parcel.add(new byte[MOST], MOST);
        assertThat(parcel.fate()).isEqualTo(Parcel.Fate.KEPT);

        parcel.add(new byte[MOST], MOST);
        assertThat(parcel.fate()).isEqualTo(Parcel.Fate.TOO_LARGE);
        assertThat(parcel.endless()).isFalse();
        assertThat(wide.taken()).isZero();

        parcel.add(new byte[1], 1);
        assertThat(parcel.endless()).isTrue();
    }

    @Test
    void gives_its_room_back_once_however_often_it_is_closed() {
        Parcel parcel = parcel(8_000);

        parcel.close();
        parcel.close();

        assertThat(room.taken()).isZero();
    }

    private Parcel parcel(int... parts) {
        var parcel = new Parcel(room, MOST);
        for (int part : parts) {
            parcel.add(new byte[part], part);
        }
        return parcel;
    }
}
