package yardlight.gateway.shutin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;
import yardlight.gateway.fields.Pieces;
import yardlight.gateway.fields.Values;
import yardlight.gateway.page.Tongues;
import yardlight.gateway.setup.SetupReader;

/** How a site is asked to shut in, in its form and in the setup. */
class TermsFieldsTest {

    private static final String AROUND =
            "ladders: [{id: night, rungs: [{call: [everyone]}]}]\n" + "boxes: [{id: mesa-9-box, site: mesa-9}]\n";

    private final SetupReader reader = new SetupReader(List.of(SmtpChannel.mail(Optional.empty())));

    private Optional<Terms> read(Node.Members site) {
        var root =
                new LinkedHashMap<>(((Node.Members) Document.setupYaml(AROUND).root()).nodes());
        root.put("sites", new Node.Items(List.of(site)));
        return reader.read(new Document(new Node.Members(root), List.of(), true))
                .sites()
                .get("mesa-9")
                .shutIn();
    }

    private static Node.Members site(Map<String, Node> terms) {
        var site = new LinkedHashMap<>(
                ((Node.Members) Document.setupYaml("{id: mesa-9, zone: America/Chicago, ladder: night}")
                                .root())
                        .nodes());
        if (!terms.isEmpty()) {
            site.put("shutIn", new Node.Members(terms));
        }
        return new Node.Members(site);
    }

    private static Map<String, Node> terms(Pieces pieces) {
        var terms = new LinkedHashMap<>(pieces.some(
                        Map.of(
                                "point", Pieces.text("stop"),
                                "done", Pieces.text("stopped"),
                                "refused", Pieces.text("not-stopped"),
                                "expires", pieces.span(60, 3600),
                                "confirmWithin", pieces.span(3600, 7200),
                                "lastCall", pieces.span(60, 172_800)),
                        false)
                .nodes());
        if (pieces.perhaps()) {
            terms.put("box", Pieces.text("mesa-9-box"));
        } else {
            terms.put("relay", Pieces.text("plc-gateway"));
        }
        return terms;
    }

    @Test
    void go_into_the_form_and_out_of_it_as_they_are() {
        for (int seed = 0; seed < 1_000; seed++) {
            Node.Members site = site(terms(new Pieces(seed)));
            Values sent = Values.typed(Pieces.sent(TermsFields.LAYOUT.shown(site)));

            assertThat(TermsFields.LAYOUT.on(sent, site)).as("seed " + seed).isEqualTo(site);
            assertThat(read(TermsFields.LAYOUT.on(sent, site(Map.of()))))
                    .as("seed " + seed)
                    .isEqualTo(read(site))
                    .isPresent();
        }
    }

    @Test
    void another_way_takes_the_place_of_the_first_one() {
        Node.Members site = site(Map.of("box", Pieces.text("mesa-9-box")));
        var typed = new HashMap<>(TermsFields.LAYOUT.shown(site).byId());
        typed.put("shutIn-way", "relay");
        typed.put("shutIn-relay", "plc-gateway");

        assertThat(read(TermsFields.LAYOUT.on(new Values(typed), site)))
                .contains(Terms.usual(Terms.Way.RELAY, "plc-gateway"));
    }

    @Test
    void a_site_is_never_asked_any_more_when_nothing_brings_it() {
        Node.Members site = site(Map.of("box", Pieces.text("mesa-9-box"), "lastCall", Pieces.text("PT30M")));
        var typed = new HashMap<>(TermsFields.LAYOUT.shown(site).byId());
        typed.put("shutIn-way", "");

        assertThat(TermsFields.LAYOUT.on(new Values(typed), site)).isEqualTo(site(Map.of()));
        assertThat(TermsFields.LAYOUT.mistakes(new Values(typed), site, Tongues.ENGLISH))
                .isEmpty();
        assertThat(TermsFields.LAYOUT.mistakes(new Values(typed), site(Map.of()), Tongues.ENGLISH))
                .containsOnlyKeys("shutIn/way");
    }

    @Test
    void has_every_field_that_the_setup_knows_of_it() {
        assertThat(Pieces.paths(TermsFields.LAYOUT))
                .containsExactly(
                        "shutIn/box",
                        "shutIn/confirmWithin",
                        "shutIn/done",
                        "shutIn/expires",
                        "shutIn/lastCall",
                        "shutIn/point",
                        "shutIn/refused",
                        "shutIn/relay");
    }
}
