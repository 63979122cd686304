package yardlight.channels.http;

import java.io.IOException;
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

/** The contract of all channels, kept towards the JDK's own HTTP server. */
class HttpChannelTest extends ChannelContract {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private StandInProvider provider;
    private Channel channel;

    @BeforeEach
    void open() throws IOException {
        provider = new StandInProvider();
        channel = HttpChannel.of(
                "text",
                Optional.of(Settings.of(Settings.json(
                        provider.url("/v2/messages"), "{\"to\":\"{to}\",\"body\":{\"text\":\"{text}\"}}"))));
    }

    @AfterEach
    void close() {
        channel.close();
        provider.close();
    }

    @Override
    protected Channel channel() {
        return channel;
    }

    @Override
    protected Channel notConfigured() {
        return HttpChannel.of("text", Optional.empty());
    }

    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        switch (outcome) {
            case ACCEPTED -> provider.says(200, words);
            case REFUSED -> provider.says(422, words);
            case DEFERRED -> provider.says(429, Map.of("Retry-After", "7"), words);
            case UNKNOWN -> provider.hangsUp();
        }
    }

    @Override
    protected void outsideCuts() {
        provider.close();
    }

    @Override
    protected void outsideIsAway() {
        provider.isAway();
    }

    @Override
    protected List<Arrival> arrivals() {
        return provider.messages.stream().map(HttpChannelTest::arrival).toList();
    }

    @Override
    protected String address() {
        return "+15755550101";
    }

    private static Arrival arrival(StandInProvider.Asked asked) {
        JsonNode body = JSON.readTree(asked.body());
        return new Arrival(
                asked.header("Message-Key"),
                body.get("to").stringValue(),
                body.at("/body/text").stringValue());
    }
}
