package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * RFC 6298, 2: first SRTT = R and RTTVAR = R/2, then RTTVAR = 3/4 RTTVAR + 1/4 |SRTT - R'| before SRTT = 7/8 SRTT + 1/8 R';
 * RTO = SRTT + max(G, 4 RTTVAR). Read in extracts; the traces were worked out from these rules, not with this code.
 */
class SmoothedAgainstTest {

    private static final double CLOSE = 1e-6;

    @Test
    void follows_the_trace_of_four_round_trips() {
        double[][] trace = {
            {0.5, 0.5, 0.25, 1.5},
            {0.6, 0.5125, 0.2125, 1.3625},
            {0.4, 0.4984375, 0.1875, 1.2484375},
            {0.8, 0.5361328125, 0.216015625, 1.4001953125}
        };
        Smoothed smoothed = Smoothed.UNKNOWN;
        for (double[] step : trace) {
            smoothed = smoothed.mean() == 0 ? Smoothed.first(step[0]) : smoothed.next(step[0]);

            assertThat(smoothed.mean()).isCloseTo(step[1], within(CLOSE));
            assertThat(smoothed.deviation()).isCloseTo(step[2], within(CLOSE));
            assertThat(smoothed.timeout(0)).isCloseTo(step[3], within(CLOSE));
        }
    }

    @Test
    void gives_the_deadlines_of_heartbeats_about_a_minute_apart() {
        double[] gaps = {60, 62, 58, 60, 75, 60, 60, 60};
        double[] deadlines = {180, 152.25, 131.21875, 113.441406, 116.979980, 104.817444, 95.435234, 88.170808};
        Smoothed smoothed = Smoothed.first(gaps[0]);
        for (int i = 0; i < gaps.length; i++) {
            smoothed = i == 0 ? smoothed : smoothed.next(gaps[i]);

            assertThat(smoothed.timeout(1)).isCloseTo(deadlines[i], within(CLOSE));
        }
    }

    @Test
    void ends_one_tick_after_the_interval_when_nothing_ever_varies() {
        Smoothed smoothed = Smoothed.first(60);
        for (double deadline : new double[] {180, 150, 127.5, 110.625, 97.96875, 88.4765625}) {
            assertThat(smoothed.timeout(1)).isCloseTo(deadline, within(CLOSE));
            smoothed = smoothed.next(60);
        }
        for (int i = 0; i < 100; i++) {
            smoothed = smoothed.next(60);
        }
        assertThat(smoothed.timeout(1)).isCloseTo(61, within(CLOSE));
    }
}
