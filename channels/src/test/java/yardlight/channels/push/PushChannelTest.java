package yardlight.channels.push;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.ChannelContract;
import yardlight.channels.Message;
import yardlight.channels.web.Limits;

/** The contract of all channels, kept towards a push service that decrypts. */
class PushChannelTest extends ChannelContract {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final PushKey KEY = PushKey.of(PushKey.fresh());

    private StandInService service;
    private Channel channel;

    static PushSettings settings() {
        Limits patient = new Limits(Duration.ofSeconds(10), Duration.ofSeconds(30));
        return new PushSettings(KEY, "mailto:yard@ranch.example", Duration.ofHours(1), patient, true);
    }

    @BeforeEach
    void open() throws IOException {
        service = new StandInService();
        channel = PushChannel.of(Optional.of(settings()));
        // A service counts as the carrier once it has taken something.
        channel.send(new Message("callout-1.1", address(), "before", AT));
        service.pushed.clear();
    }

    @AfterEach
    void close() {
        channel.close();
        service.close();
    }

    @Override
    protected Channel channel() {
        return channel;
    }

    @Override
    protected Channel notConfigured() {
        return PushChannel.of(Optional.empty());
    }

    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        switch (outcome) {
            case ACCEPTED -> service.says(201, Map.of(), words);
            case REFUSED -> service.says(410, Map.of(), words);
            case DEFERRED -> service.says(429, Map.of("Retry-After", "7"), words);
            case UNKNOWN -> service.says(0, Map.of(), words);
        }
    }

    @Override
    protected void outsideCuts() {
        service.close();
    }

    @Override
    protected void outsideIsAway() {
        service.isAway();
    }

    @Override
    protected List<Arrival> arrivals() {
        return service.pushed.stream().map(this::arrival).toList();
    }

    @Override
    protected String address() {
        return service.subscription();
    }

    private Arrival arrival(StandInService.Pushed pushed) {
        JsonNode note = JSON.readTree(pushed.note());
        String endpoint = service.origin() + pushed.target();
        return new Arrival(
                pushed.header("Topic"),
                endpoint + "|" + Browser.KEY + "|" + Browser.SECRET,
                note.get("text").stringValue());
    }
}
