package yardlight.gateway.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;

@GatewayTest
class OwnContactTest {

    private final People people;
    private final OwnContact own;

    OwnContactTest(People people, OwnContact own) {
        this.people = people;
        this.own = own;
    }

    @Test
    void is_the_one_that_somebody_sets_up_for_themselves_and_stays() {
        people.keep(new Person("faye", "{noop}x", Role.READER), TestGateway.NOW);

        own.of("faye", List.of(contact("faye-moss")));
        own.of("faye", List.of(contact("somebody-else")));

        assertThat(people.byLogin("faye").flatMap(Person::contact)).contains("faye-moss");
    }

    @Test
    void is_none_where_none_is_set_up() {
        people.keep(new Person("finn", "{noop}x", Role.READER), TestGateway.NOW);

        own.of("finn", List.of(Piece.none(Part.SITES, "mesa-9")));

        assertThat(people.byLogin("finn").flatMap(Person::contact)).isEqualTo(Optional.empty());
    }

    private static Piece contact(String id) {
        return Piece.of(Part.CONTACTS, new Node.Members(Map.of("id", new Node.Text(id))));
    }
}
