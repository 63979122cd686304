package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import yardlight.db.setup.SetupVersion;
import yardlight.db.setup.SetupVersions;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

class DeskIT extends EditingGateway {

    private final SetupVersions versions;
    private final SetupInForce inForce;

    DeskIT(Desk desk, History history, Lane lane, SetupReader reader, SetupVersions versions, SetupInForce inForce) {
        super(desk, history, lane, reader);
        this.versions = versions;
        this.inForce = inForce;
    }

    @Test
    void stores_a_piece_and_the_engine_goes_by_it_at_once() {
        int seen = store(Documents.CONTRACT);

        Saved saved = desk.save(seen, List.of(again(7)), "owner");

        assertThat(saved).isEqualTo(new Saved.Stored(seen + 1));
        assertThat(inForce.setup().ladders().get("night").again()).isEqualTo(7);
        assertThat(versions.newest()).map(SetupVersion::by).contains("owner");
    }

    @Test
    void lets_two_people_change_different_pieces() {
        int seen = store(Documents.CONTRACT);

        desk.save(seen, List.of(again(5)), "owner");
        Saved second = desk.save(seen, List.of(contact("ben", "Benjamin Tully")), "ben");

        assertThat(second).isEqualTo(new Saved.Stored(seen + 2));
        assertThat(inForce.setup().ladders().get("night").again()).isEqualTo(5);
        assertThat(inForce.setup().contacts().get("ben").name()).isEqualTo("Benjamin Tully");
    }

    @Test
    void tells_the_second_of_two_who_change_one_piece_what_the_first_changed() {
        int seen = store(Documents.CONTRACT);
        Piece mine = again(3);
        desk.save(seen, List.of(again(5)), "ben");

        Saved second = desk.save(seen, List.of(mine), "owner");

        assertThat(second).isInstanceOfSatisfying(Saved.Overtaken.class, overtaken -> {
            assertThat(overtaken.by()).isEqualTo("ben");
            assertThat(overtaken.version()).isEqualTo(seen + 1);
            assertThat(overtaken.changes())
                    .containsExactly(
                            new Saved.Changed(Part.LADDERS, "night", List.of(new Difference("again", "1", "5"))));
            assertThat(desk.overtaken(seen, List.of(mine))).contains(overtaken);
            assertThat(desk.overtaken(overtaken.version(), List.of(mine))).isEmpty();
        });
        assertThat(inForce.setup().ladders().get("night").again()).isEqualTo(5);
        assertThat(desk.save(seen + 1, List.of(mine), "owner")).isEqualTo(new Saved.Stored(seen + 2));
    }

    @Test
    void tells_who_changes_a_piece_that_is_gone_that_it_is_gone() {
        int seen = store(Documents.CONTRACT + "  - {id: day, rungs: [{call: [ben]}]}\n");
        Node.Members day = desk.look().tree().piece(Part.LADDERS, "day").node().orElseThrow();
        desk.save(seen, List.of(Piece.none(Part.LADDERS, "day")), "ben");

        Saved second =
                desk.save(seen, List.of(Piece.of(Part.LADDERS, with(day, "again", new Node.Number("2")))), "owner");

        assertThat(second)
                .isInstanceOfSatisfying(
                        Saved.Overtaken.class,
                        overtaken -> assertThat(overtaken.changes())
                                .containsExactly(new Saved.Changed(
                                        Part.LADDERS, "day", List.of(new Difference("", "day", "")))));
    }

    @Test
    void keeps_nothing_of_what_is_wrong_and_says_where() {
        int seen = store(Documents.CONTRACT);
        Piece wrong = Piece.of(
                Part.LADDERS, with(ladder(), "rungs", new Node.Items(List.of(rung("ana"), rung("nobody-here")))));

        Saved saved = desk.save(seen, List.of(wrong, contact("ben", "Benjamin Tully")), "owner");

        assertThat(saved)
                .isInstanceOfSatisfying(
                        Saved.Wrong.class,
                        told -> assertThat(told.mistakes())
                                .containsExactly(new Saved.Mistake(
                                        Optional.of(wrong),
                                        "rungs/1/call/0",
                                        Sentence.of(
                                                "must.exist",
                                                "contact must exist: nobody-here",
                                                "contact",
                                                "nobody-here"))));
        assertThat(desk.look().version()).isEqualTo(seen);
        assertThat(inForce.setup().contacts().get("ben").name()).isEqualTo("Ben Tully");
    }

    @Test
    void refuses_to_take_away_a_ladder_that_a_site_uses() {
        int seen = store(Documents.CONTRACT);

        Saved saved = desk.save(seen, List.of(Piece.none(Part.LADDERS, "night")), "owner");

        assertThat(saved)
                .isInstanceOfSatisfying(
                        Saved.Wrong.class,
                        told -> assertThat(told.mistakes())
                                .map(mistake -> mistake.piece().map(Piece::key).orElse("") + " " + mistake.field())
                                .containsExactly("mesa-9 ladder"));
        assertThat(desk.look().version()).isEqualTo(seen);
    }

    @Test
    void tries_without_storing() {
        int seen = store(Documents.CONTRACT);

        Desk.Trial trial = desk.attempt(List.of(again(9)));

        assertThat(trial.setup().orElseThrow().ladders().get("night").again()).isEqualTo(9);
        assertThat(desk.look().version()).isEqualTo(seen);
        assertThat(desk.change(again(9)).differences()).containsExactly(new Difference("again", "1", "9"));
    }

    @Test
    void stores_one_of_many_who_save_the_same_piece_at_once() throws Exception {
        int seen = store(Documents.CONTRACT);
        Piece mine = again(20);

        List<Saved> answers = atOnce(8, number -> () -> desk.save(seen, List.of(mine), "hand-" + number));

        assertThat(answers).filteredOn(Saved.Stored.class::isInstance).hasSize(1);
        assertThat(answers).filteredOn(Saved.Overtaken.class::isInstance).hasSize(7);
        assertThat(desk.look().version()).isEqualTo(seen + 1);
    }

    /** Whoever is overtaken by others three times in a row is told so; tried again it is stored. Nothing is lost. */
    @Test
    void loses_nothing_of_many_who_save_different_pieces_at_once() throws Exception {
        int seen = store(Documents.CONTRACT);
        List<Piece> wishes = List.of(again(4), contact("ana", "Ana R."), contact("ben", "Ben T."));

        atOnce(3, number -> () -> {
            Saved saved = desk.save(seen, List.of(wishes.get(number)), "hand-" + number);
            while (saved instanceof Saved.Overtaken overtaken) {
                saved = desk.save(overtaken.version(), List.of(wishes.get(number)), "hand-" + number);
            }
            return saved;
        });

        assertThat(desk.look().version()).isEqualTo(seen + 3);
        assertThat(wishes)
                .allSatisfy(wish -> assertThat(desk.look().tree().piece(wish.part(), wish.key()))
                        .isEqualTo(wish));
    }

    private interface Task {
        Callable<Saved> of(int number);
    }

    private static List<Saved> atOnce(int count, Task task) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(count);
        try {
            var tasks = new ArrayList<Callable<Saved>>();
            for (int i = 0; i < count; i++) {
                tasks.add(task.of(i));
            }
            var answers = new ArrayList<Saved>();
            for (Future<Saved> answer : people.invokeAll(tasks, 30, TimeUnit.SECONDS)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            people.shutdown();
        }
    }

    /** Comments go, as the documents before it keep them; all that is read stays. */
    @Test
    void takes_over_a_document_with_comments_anchors_and_quoted_times() {
        String yaml = Documents.CONTRACT
                .replace("textsPerHour: 20", "textsPerHour: 020  # not octal")
                .replace("name: Ben Tully", "name: &tully 'No: 007, \"yes\" # \u00f1'");
        int seen = store(yaml);
        SetupTree before = desk.look().tree();

        desk.save(seen, List.of(again(1)), "owner");

        Document after = SetupText.document(versions.newest().orElseThrow().document());
        assertThat(after.faults()).isEmpty();
        assertThat(desk.look().tree().changes(before)).isEmpty();
        assertThat(versions.byVersion(seen).orElseThrow().document()).isEqualTo(yaml);
    }

    @Test
    void leaves_a_document_that_came_as_json_readable_as_json() {
        String json = SetupText.as(Format.JSON, Documents.CONTRACT);
        int seen = store(json);

        desk.save(seen, List.of(again(6)), "owner");

        String stored = versions.newest().orElseThrow().document();
        String again = SetupText.as(Format.JSON, stored);
        assertThat(Document.setupJson(again).faults()).isEmpty();
        assertThat(SetupText.format(stored)).isEqualTo(Format.JSON);
        assertThat(again).contains("\"again\":6");
    }
}
