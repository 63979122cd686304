package yardlight.gateway.sites;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.Response;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;
import yardlight.gateway.fields.Pieces;
import yardlight.gateway.fields.Values;
import yardlight.gateway.setup.SetupReader;

/** The times of a site in its form and in the setup. */
class ResponseFieldsTest {

    private final SetupReader reader = new SetupReader(List.of(SmtpChannel.mail(Optional.empty())));

    private Site read(Node.Members site) {
        var ladder = ((Node.Members) Document.setupYaml("ladders: [{id: night, rungs: [{call: [everyone]}]}]")
                .root());
        var root = new LinkedHashMap<>(ladder.nodes());
        root.put("sites", new Node.Items(List.of(site)));
        return reader.read(new Document(new Node.Members(root), List.of(), true))
                .sites()
                .get("mesa-9");
    }

    private static Node.Members site(Node response) {
        var site = new LinkedHashMap<>(
                ((Node.Members) Document.setupYaml("{id: mesa-9, zone: America/Chicago, ladder: night, fills: [gas]}")
                                .root())
                        .nodes());
        if (response != null) {
            site.put("response", response);
        }
        return new Node.Members(site);
    }

    @Test
    void go_into_the_form_and_out_of_it_as_they_are() {
        for (int seed = 0; seed < 1_000; seed++) {
            var pieces = new Pieces(seed);
            Node.Members site = site(pieces.some(
                    Map.of(
                            "reach", pieces.span(1, 86_400),
                            "drive", pieces.span(0, 86_400),
                            "act", pieces.span(0, 86_400),
                            "margin", pieces.number(1, 10)),
                    false));
            Values sent = Values.typed(Pieces.sent(ResponseFields.LAYOUT.shown(site)));

            Node.Members untouched = ResponseFields.LAYOUT.on(sent, site);
            Node.Members anew = ResponseFields.LAYOUT.on(sent, site(null));

            assertThat(untouched).as("seed " + seed).isEqualTo(site);
            assertThat(read(anew)).as("seed " + seed).isEqualTo(read(site));
        }
    }

    @Test
    void are_the_usual_ones_when_nothing_is_filled_in() {
        var typed = new Values(Map.of("response-reach", ""));

        assertThat(read(ResponseFields.LAYOUT.on(typed, site(null))).response()).isEqualTo(Response.USUAL);
    }
}
