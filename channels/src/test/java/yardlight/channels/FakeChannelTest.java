package yardlight.channels;

import java.util.List;

class FakeChannelTest extends ChannelContract {

    private final FakeChannel fake = FakeChannel.named("fake");

    @Override
    protected Channel channel() {
        return fake;
    }

    @Override
    protected Channel notConfigured() {
        return FakeChannel.notConfigured("fake");
    }

    @Override
    protected void outsideSays(Attempt.Outcome outcome, String words) {
        fake.answering(message -> switch (outcome) {
            case ACCEPTED -> Attempt.accepted(words);
            case REFUSED -> Attempt.refused(words);
            case DEFERRED -> Attempt.deferred(words);
            case UNKNOWN -> Attempt.unknown(words);
        });
    }

    @Override
    protected void outsideCuts() {
        fake.answering(Attempt.deferred("cut"));
    }

    @Override
    protected void outsideIsAway() {
        fake.away("cannot be reached");
    }

    @Override
    protected List<Arrival> arrivals() {
        return fake.taken().stream()
                .map(message -> new Arrival(message.id(), message.address(), message.text()))
                .toList();
    }

    @Override
    protected String address() {
        return "anybody";
    }
}
