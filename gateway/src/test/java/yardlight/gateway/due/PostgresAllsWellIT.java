package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.gateway.SmallGateway;

class PostgresAllsWellIT extends AllsWellContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }

    /** Over three mornings, so that whoever is quicker is not always the same. */
    @Test
    void of_two_gateways_one_sends_it() {
        String url = database().newUrl();
        try (SmallGateway one = start(url);
                SmallGateway two = start(url)) {
            for (int day = 25; day <= 27; day++) {
                it_is("2026-11-" + day + "T07:00");
                sent(day - 24);
            }
            await().until(() -> two.jdbc().queryForObject("select count(*) from outbox", Integer.class) == 0);
            assertThat(one.jdbc().queryForObject("select count(*) from notice", Integer.class))
                    .isEqualTo(3);
            assertThat(two.jdbc().queryForObject("select count(*) from attempt", Integer.class))
                    .isEqualTo(3);
        }
        assertThat(texts()).extracting(Message::id).hasSize(3).doesNotHaveDuplicates();
    }
}
