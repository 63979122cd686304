package yardlight.gateway.turns;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.Told;
import yardlight.escalation.Fixtures;

/** Ana and Ben week about from Monday 2026-11-23; Ben stands in over Christmas. */
class BalanceTest {

    @Test
    void nights_and_texts_are_counted_for_each_behind_and_ahead() {
        var balance = new Balance(
                List.of(
                        new Told.Text("ana", at("2026-11-25T02:13")),
                        new Told.Text("ana", at("2026-11-25T06:59")),
                        new Told.Text("ana", at("2026-11-25T07:00")),
                        new Told.Text("ben", at("2026-12-02T19:00")),
                        new Told.Text("carl", at("2026-12-02T19:00"))),
                at("2026-12-21T12:00"));

        // Behind: four whole weeks in turn. Ahead from the 21st: Ana's week without the two nights of Christmas, and so
        // on.
        assertThat(balance.of(Fixtures.crew()))
                .containsExactly(new Balance.Share("ana", 14, 12, 3, 2), new Balance.Share("ben", 14, 16, 1, 1));
    }
}
