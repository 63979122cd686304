package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;
import yardlight.escalation.Answer;
import yardlight.escalation.Fixtures;
import yardlight.escalation.ShutInSaid;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.SmallGateway;

/** A request to shut in across a restart, in real time, on every database. */
abstract class ShutInRestartContract {

    private static final Terms SHORT = new Terms(
            Terms.Way.BOX,
            "mesa-9-box",
            Terms.POINT,
            Terms.DONE,
            Terms.REFUSED,
            Duration.ofSeconds(20),
            Duration.ofSeconds(21),
            Optional.empty());

    private static final String LOUD =
            "select count(*) from alarm where point = 'shut-in' and condition = 'not-confirmed' and state ="
                    + " 'unacknowledged'";

    abstract TestDatabase database();

    @Test
    void is_handed_out_under_the_same_name_and_ends_loudly_though_the_gateway_went_away_in_between() {
        String url = database().newUrl();
        Request before;
        try (SmallGateway gateway = start(url)) {
            say(gateway, new ShutInSaid.TurnedOn(SHORT.words(), "owner"));
            say(gateway, new ShutInSaid.Asked(new Asker(Asker.Kind.PAGE, "ana")));
            before = beat(gateway).orElseThrow();
        }

        try (SmallGateway gateway = start(url)) {
            assertThat(beat(gateway)).contains(before);

            await().atMost(Duration.ofSeconds(60)).until(() -> loud(gateway) == 1);
            assertThat(beat(gateway)).isEmpty();
            assertThat(gateway.jdbc().queryForList("select state from shut_in", String.class))
                    .containsExactly("unconfirmed");
            assertThat(gateway.jdbc().queryForList("select kind from due where kind = 'shut-in'", String.class))
                    .isEmpty();
        }
    }

    private static int loud(SmallGateway gateway) {
        return gateway.jdbc().queryForObject(LOUD, Integer.class);
    }

    private static void say(SmallGateway gateway, ShutInSaid said) {
        assertThat(gateway.lane().decide(new Stimulus.ShutIn("mesa-9", said))).isNotInstanceOf(Answer.Refusal.class);
    }

    private static Optional<Request> beat(SmallGateway gateway) {
        Answer answer = gateway.lane().heartbeat("mesa-9-box", Heartbeat.BARE);
        return answer instanceof Answer.Offered offered ? Optional.of(offered.request()) : Optional.empty();
    }

    private SmallGateway start(String url) {
        return new SmallGateway(database(), url, setup(), List.of(), "lane", "due");
    }

    private static Setup setup() {
        Setup usual = Fixtures.theSetup();
        return new Setup(
                List.of(Fixtures.aSite().withShutIn(SHORT)),
                List.of(Fixtures.aBox()),
                usual.points(),
                List.copyOf(usual.contacts().values()),
                List.copyOf(usual.rosters().values()),
                List.copyOf(usual.ladders().values()));
    }
}
