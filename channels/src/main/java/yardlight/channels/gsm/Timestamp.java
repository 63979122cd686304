package yardlight.channels.gsm;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/** TP-Service-Centre-Time-Stamp: 3GPP TS 23.040 clause 9.2.3.11, seven octets with a time zone in quarters of an hour. */
final class Timestamp {

    private static final int LENGTH = 7;
    private static final int SECONDS_OF_A_QUARTER = 15 * 60;
    /** The year has two digits. Common practice, no source: there was no such service before. */
    private static final int FIRST_YEAR = 1970;

    private Timestamp() {}

    /** Empty if it makes no sense, such as all zeros. */
    static Optional<Instant> read(Octets in) {
        byte[] octets = in.next(LENGTH);
        int[] two = new int[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
            two[i] = (octets[i] & 0x0F) * 10 + (octets[i] >> 4 & 0x0F);
        }
        // The sign is bit 3 of the first half, which leaves three bits for its digit.
        boolean west = (octets[6] & 0x08) != 0;
        int quarters = (octets[6] & 0x07) * 10 + (octets[6] >> 4 & 0x0F);
        try {
            int year = two[0] + (two[0] + 1900 < FIRST_YEAR ? 2000 : 1900);
            ZoneOffset zone = ZoneOffset.ofTotalSeconds((west ? -quarters : quarters) * SECONDS_OF_A_QUARTER);
            return Optional.of(LocalDateTime.of(year, two[1], two[2], two[3], two[4], two[5])
                    .toInstant(zone));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
