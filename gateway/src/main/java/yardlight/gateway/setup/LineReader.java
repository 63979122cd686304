package yardlight.gateway.setup;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardlight.channels.Channel;
import yardlight.escalation.setup.Line;
import yardlight.gateway.document.Fields;

/** Reads the lines of a contact, and asks each channel whether it could ever reach the address. */
final class LineReader {

    /** The longest is a browser's subscription; each channel has its own bound. */
    private static final int LONGEST_ADDRESS = 1_200;

    private final Map<String, Channel> channels;

    LineReader(List<Channel> channels) {
        this.channels = channels.stream().collect(Collectors.toMap(Channel::name, Function.identity()));
    }

    Line read(Fields fields) {
        var line = new Line(
                Ids.reference(fields, "channel"),
                fields.needs("address").text("address", LONGEST_ADDRESS).orElse(""));
        Channel channel = channels.get(line.channel());
        if (channel != null && !line.address().isEmpty()) {
            channel.complaintAbout(line.address()).ifPresent(complaint -> fields.fault("address", complaint));
        }
        fields.nothingElse();
        return line;
    }
}
