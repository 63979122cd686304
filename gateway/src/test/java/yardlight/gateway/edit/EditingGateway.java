package yardlight.gateway.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.context.TestConstructor;
import yardlight.escalation.Stimulus;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.document.Node;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** A whole gateway on a real file, whose setup is edited. The tests of one run share it. */
@SpringBootTest
@TestConstructor(autowireMode = TestConstructor.AutowireMode.ALL)
abstract class EditingGateway {

    protected final Desk desk;
    protected final History history;
    private final Lane lane;
    private final SetupReader reader;

    EditingGateway(Desk desk, History history, Lane lane, SetupReader reader) {
        this.desk = desk;
        this.history = history;
        this.lane = lane;
        this.reader = reader;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    /** Stores a document as its owner hands it in; its version. */
    int store(String document) {
        lane.setup(document, new Stimulus.SetupChanged(reader.read(SetupText.document(document)), "owner"));
        return desk.look().version();
    }

    Node.Members ladder() {
        return desk.look().tree().piece(Part.LADDERS, "night").node().orElseThrow();
    }

    /** The ladder of the contract, climbed so often. */
    Piece again(int times) {
        return Piece.of(Part.LADDERS, with(ladder(), "again", new Node.Number(Integer.toString(times))));
    }

    Piece contact(String id, String name) {
        Node.Members contact =
                desk.look().tree().piece(Part.CONTACTS, id).node().orElseThrow();
        return Piece.of(Part.CONTACTS, with(contact, "name", new Node.Text(name)));
    }

    static Node.Members with(Node.Members object, String name, Node value) {
        Map<String, Node> members = new LinkedHashMap<>(object.nodes());
        members.put(name, value);
        return new Node.Members(members);
    }

    static Node rung(String... call) {
        return new Node.Members(Map.of(
                "call",
                new Node.Items(List.of(call).stream()
                        .map(one -> (Node) new Node.Text(one))
                        .toList())));
    }
}
