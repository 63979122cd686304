package yardlight.gateway.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.mail.SmtpChannel;
import yardlight.escalation.setup.Point;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Notes;
import yardlight.gateway.fields.Faces;
import yardlight.gateway.fields.Field;
import yardlight.gateway.fields.Form;
import yardlight.gateway.fields.Pieces;
import yardlight.gateway.fields.Values;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupReader;

/** The form of a point against the reader of the setup: what goes into the one comes out of the other. */
class PointFieldsTest {

    private static final int POINTS = 2_000;
    private static final Pattern KNOWN = Pattern.compile("known are (.*)$");
    private static final String AROUND = "sites: [{id: mesa-9, zone: America/Chicago, ladder: night}]\n"
            + "ladders: [{id: night, rungs: [{call: [everyone], wait: PT5M}]}]\n"
            + "points: [{id: water-tank, site: mesa-9, tank: {shape: upright, diameter: 12, height: 20}},"
            + " {id: line, site: mesa-9}]\n";

    private final SetupReader reader = new SetupReader(List.of(SmtpChannel.mail(Optional.empty())));

    private Point read(Node.Members point) {
        return reader.read(with(point)).point("mesa-9", "one");
    }

    private static Document with(Node.Members point) {
        var root =
                new LinkedHashMap<>(((Node.Members) Document.setupYaml(AROUND).root()).nodes());
        var points = new ArrayList<>(((Node.Items) root.get("points")).nodes());
        points.add(point);
        root.put("points", new Node.Items(points));
        return new Document(new Node.Members(root), List.of(), true);
    }

    private static Values untouched(Node.Members point) {
        return Values.typed(Pieces.sent(PointFields.LAYOUT.shown(point)));
    }

    @Test
    void a_form_that_nobody_touched_writes_the_point_as_it_was_written() {
        for (int seed = 0; seed < POINTS; seed++) {
            Node.Members point = new ChancePoint(new Pieces(seed)).made();

            Node.Members saved = PointFields.LAYOUT.on(untouched(point), point);

            assertThat(saved).as("seed " + seed).isEqualTo(point);
            assertThat(PointFields.LAYOUT.mistakes(untouched(point), point, Tongues.ENGLISH))
                    .as("seed " + seed)
                    .isEmpty();
        }
    }

    @Test
    void a_form_that_is_filled_in_from_nothing_makes_the_same_point() {
        for (int seed = 0; seed < POINTS; seed++) {
            Node.Members point = new ChancePoint(new Pieces(seed)).made();
            Node.Members empty = without(point);

            Node.Members typed = PointFields.LAYOUT.on(untouched(point), empty);

            assertThat(read(typed)).as("seed " + seed).isEqualTo(read(point));
        }
    }

    /** Only what the form does not show: who it is, and whether it is in service. */
    private static Node.Members without(Node.Members point) {
        var kept = new LinkedHashMap<>(point.nodes());
        kept.keySet().retainAll(List.of("id", "site", "inService"));
        return new Node.Members(kept);
    }

    @Test
    void one_point_is_made_of_another_by_its_form() {
        for (int seed = 0; seed < POINTS; seed++) {
            Node.Members before = new ChancePoint(new Pieces(seed)).made();
            Node.Members wanted = new ChancePoint(new Pieces(seed + POINTS)).made();

            Node.Members saved = PointFields.LAYOUT.on(untouched(wanted), before);

            Point made = read(saved);
            Point meant = read(wanted);
            assertThat(made.inService()).isEqualTo(read(before).inService());
            assertThat(saved.nodes().keySet()).as("seed " + seed).doesNotContain("");
            assertThat(new Object[] {made.name(), made.unit(), made.priority(), made.timing(), made.suppressedWhile()})
                    .as("seed " + seed)
                    .isEqualTo(new Object[] {
                        meant.name(), meant.unit(), meant.priority(), meant.timing(), meant.suppressedWhile()
                    });
            assertThat(made.rules()).as("seed " + seed).isEqualTo(meant.rules());
            assertThat(made.equipment()).as("seed " + seed).isEqualTo(meant.equipment());
        }
    }

    @Test
    void has_every_field_that_the_setup_knows_of_a_point() {
        var known = new TreeSet<String>();
        known.addAll(known("", "x: 1"));
        known.removeAll(List.of("limits", "change", "drift", "current", "tank", "pump", "leak"));
        for (String object : List.of("limits", "change", "drift", "current", "pump", "leak")) {
            known(object + "/", object + ": {x: 1}").forEach(name -> known.add(object + "/" + name));
        }
        for (String tank : List.of("shape: upright", "shape: lying", "shape: box", "strapping: [[1, 2]]")) {
            known("tank/", "tank: {x: 1, " + tank + "}").forEach(name -> known.add("tank/" + name));
        }
        known.removeAll(List.of("id", "site", "inService"));

        assertThat(Pieces.paths(PointFields.LAYOUT)).containsExactlyElementsOf(known);
    }

    private List<String> known(String place, String point) {
        var node = (Node.Members)
                Document.setupYaml("{id: one, site: mesa-9, " + point + "}").root();
        var problem = catchThrowableOfType(Problem.class, () -> reader.read(with(node)));
        return problem.faults().stream()
                .filter(fault -> fault.place().equals("#/points/2/" + place + "x"))
                .flatMap(fault -> KNOWN.matcher(fault.detail()).results())
                .flatMap(found -> List.of(found.group(1).split(", ")).stream())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "limits-high | about 3 | limits/high | A number such as 12.5, or nothing.",
                "onDelay | a while | onDelay | A whole number, or nothing.",
                "tank-diameter | 12 | tank/shape | Something is filled in below. Choose this too, or empty it.",
                "pump-on | 4 | pump | Something is filled in below. Choose this too, or empty it."
            })
    void says_what_cannot_be_put_into_a_setup(String id, String typed, String path, String words) {
        var empty = new Node.Members(Map.of());

        var wrong = PointFields.LAYOUT.mistakes(new Values(Map.of(id, typed)), empty, Tongues.ENGLISH);

        assertThat(wrong).containsExactly(Map.entry(path, words));
    }

    @Test
    void names_the_line_of_a_strapping_table_that_is_no_pair() {
        var typed = new Values(Map.of("tank-shape", "strapping", "tank-strapping", "1 20\n\n2; 41\n3 sixty\n4 80"));

        assertThat(PointFields.LAYOUT.mistakes(typed, new Node.Members(Map.of()), Tongues.ENGLISH))
                .containsExactly(Map.entry(
                        "tank/strapping", "Line 4 has to be two numbers, a height and a volume, such as 1 20.5."));
    }

    @Test
    void a_tank_that_is_taken_away_is_gone_whatever_is_left_in_its_fields() {
        var point = (Node.Members) Document.setupYaml(
                        "{id: one, site: mesa-9, tank: {shape: upright, diameter: 12, height: 20}, pump: {}}")
                .root();
        var typed = new HashMap<>(untouched(point).byId());
        typed.remove("tank-shape");
        typed.remove("pump");

        Node.Members saved = PointFields.LAYOUT.on(new Values(typed), point);

        assertThat(saved.nodes()).containsOnlyKeys("id", "site");
    }

    @Test
    void another_shape_keeps_only_its_own_sizes() {
        var point = (Node.Members) Document.setupYaml(
                        "{id: one, site: mesa-9, tank: {shape: upright, diameter: 12, height: 20, gravity: 1.1}}")
                .root();
        var typed = new HashMap<>(untouched(point).byId());
        typed.put("tank-shape", "strapping");
        typed.put("tank-strapping", "1 20\n2 41.5");

        Node.Members saved = PointFields.LAYOUT.on(new Values(typed), point);

        assertThat(((Node.Members) saved.nodes().get("tank")).nodes()).containsOnlyKeys("strapping", "gravity");
        assertThat(read(saved).equipment().tank().orElseThrow().tank().brim()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void has_words_for_all_that_it_shows_in_both_languages(int seed) {
        Node.Members point = new ChancePoint(new Pieces(seed)).made();
        for (Tongue tongue : List.of(Tongues.ENGLISH, Tongues.SPANISH)) {
            var form = new Form(PointFields.LAYOUT, 1, untouched(point), Notes.NONE, false);

            var folds = new Faces(form, tongue, Map.of(Field.OF_POINT, "ft", Field.OF_TANK, "ft"), Map.of()).folds();

            assertThat(folds).hasSize(10).noneMatch(Faces.Fold::open);
            assertThat(folds)
                    .flatMap(Faces.Fold::faces)
                    .noneMatch(face -> face.label().isBlank());
        }
    }
}
